import type { Format } from '../../../app/language/format.ts';
import type { Finding, Severity } from '../../../core/evaluation/finding.ts';
import type { QuantityId } from '../../../core/evaluation/quantities.ts';
import type { Contact, Support } from '../../../core/support/support.ts';
import { CONTACTS } from '../../../core/support/support.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { say } from '../../language/messages.ts';
import { rangeText } from '../../language/range-text.ts';
import { type AngleMark, angleMarks } from '../view/angle-marks.ts';
import { waterHeight } from '../view/hull-drawing.ts';
import type { LabelWish } from '../view/label-placer.ts';
import type { ColourName } from '../view/palette.ts';
import { LETTERING, type LetteringName } from '../view/pen.ts';
import { afloatReady, datumX, isOverview, projectorOf, type Scene, seatReport } from '../view/scene.ts';
import { isWithin, type ScreenPoint, type ScreenRect } from '../view/screen-point.ts';
import { seatFloor } from '../view/seat-floor.ts';
import { SEVERITY_PX } from '../view/severity-shape.ts';
import { CENTRE_MARK_PX } from './support.ts';

/** A label with how it is written. */
export interface DrawnLabel extends LabelWish {
  readonly text: string;
  readonly lettering: LetteringName;
  readonly colour: ColourName;
  /** Marked beside the value unless good. */
  readonly severity: Severity;
  /** The part that it lights. */
  readonly part: string | null;
}

export type MeasureText = (text: string, lettering: LetteringName) => number;

const MARK_ROOM = SEVERITY_PX + 5;

/** Makes labels with the sizes of their texts. */
function labelMaker(measure: MeasureText) {
  return (given: {
    id: string;
    text: string;
    lettering: LetteringName;
    colour: ColourName;
    anchor: ScreenPoint;
    bounds: ScreenRect;
    toward: number;
    gap: number;
    severity?: Severity;
    part?: string;
  }): DrawnLabel => {
    const severity = given.severity ?? 'good';
    const mark = severity === 'good' ? 0 : MARK_ROOM;
    return {
      ...given,
      severity,
      part: given.part ?? null,
      width: measure(given.text, given.lettering) + mark,
      height: LETTERING[given.lettering].height,
    };
  };
}

/** Every label of the seat worked on that has what it speaks of in sight, the most important first. */
export function drawingLabels(scene: Scene, measure: MeasureText): DrawnLabel[] {
  const make = labelMaker(measure);
  const labels = isOverview(scene)
    ? [nameLabels, loadLabels]
    : [angleLabels, loadLabels, shortfallLabels, nameLabels, plainLabels];
  return labels.flatMap((kind) => kind(scene, make)).filter(({ anchor, bounds }) => isWithin(anchor, bounds));
}

type Make = ReturnType<typeof labelMaker>;

function findingOn(scene: Scene, quantity: QuantityId): Finding | null {
  const { findings } = scene.picture.report;
  return findings.find((f) => f.quantity === quantity && (f.seat === scene.seat || f.seat === null)) ?? null;
}

function angleLabels(scene: Scene, make: Make): DrawnLabel[] {
  const report = seatReport(scene);
  if (!report) return [];
  const scale = scene.geometry.camera.pixelsPerMetre;
  const marks = angleMarks(report.stances.ready, scale);
  return marks.map(({ angle, view, arc, value }) => {
    const to = projectorOf(scene, view);
    const corner = to(arc.corner);
    const middle = to(arc.middle);
    const finding = findingOn(scene, angle);
    const bounds = inner(scene.layout.windows[view]);
    return make({
      id: angle,
      text: scene.format.degrees(toDegrees(value)),
      lettering: 'label',
      colour: 'measure',
      ...underTop(anglePlace(angle, { corner, middle, scale }), bounds),
      bounds,
      severity: finding?.severity,
      part: finding?.part,
    });
  });
}

/** How far under the upper edge such a mark's figure stands, pixels. */
const EDGE_PX = 10;

/** The place for a mark above its view, beside the head at the view's upper edge: its value is still written. */
function underTop<P extends Pick<LabelWish, 'anchor' | 'toward'>>(place: P, { top }: ScreenRect): P {
  const { x, y } = place.anchor;
  return y < top && y > top - MOST_OVER_TOP
    ? { ...place, anchor: { x, y: top + EDGE_PX }, toward: 0 }
    : place;
}

/** Above a view by more than this is out of sight, pixels. */
const MOST_OVER_TOP = 60;

/** How far the seat stands out behind the hip joint, metres (drawing only). */
const BEHIND_HIP = 0.1;

/** The preferred place of an angle's value: outside its arc; over the trunk's; behind the seat for the hip's. */
function anglePlace(
  angle: AngleMark['angle'],
  { corner, middle, scale }: { corner: ScreenPoint; middle: ScreenPoint; scale: number },
): Pick<LabelWish, 'anchor' | 'toward' | 'gap'> {
  if (angle === 'kneelingHip') return { anchor: corner, toward: Math.PI, gap: BEHIND_HIP * scale };
  if (angle.startsWith('trunk')) return { anchor: middle, toward: -Math.PI / 2, gap: 5 };
  return { anchor: middle, toward: Math.atan2(middle.y - corner.y, middle.x - corner.x), gap: 5 };
}

/** The preferred direction of a load's value from its contact in the plan. */
const LOAD_TOWARD: Readonly<Record<Contact, number>> = { knee: 2.2, rearFoot: Math.PI, frontFoot: 0 };
const SHARE_OF: Readonly<Record<Contact, QuantityId>> = {
  knee: 'kneeShare',
  rearFoot: 'rearShare',
  frontFoot: 'frontShare',
};

function loadLabels(scene: Scene, make: Make): DrawnLabel[] {
  const report = seatReport(scene);
  if (!report) return [];
  const to = projectorOf(scene, 'plan');
  return CONTACTS.map((contact) => {
    const finding = findingOn(scene, SHARE_OF[contact]);
    return make({
      id: `load-${contact}`,
      text: shareText(report.support, contact, scene.format),
      lettering: 'label',
      colour: 'measure',
      anchor: to(report.support.contacts[contact]),
      bounds: inner(scene.layout.windows.plan),
      toward: LOAD_TOWARD[contact],
      gap: 12,
      severity: finding?.severity,
      part: finding?.part,
    });
  });
}

/** The range of what a share may be: "55–71 %". */
function shareText({ shareRanges }: Support, contact: Contact, format: Format): string {
  return rangeText({ range: shareRanges[contact], unit: '1' }, format.quantity(SHARE_OF[contact]));
}

function shortfallLabels(scene: Scene, make: Make): DrawnLabel[] {
  const stance = seatReport(scene)?.stances.ready;
  if (!stance) return [];
  const to = projectorOf(scene, 'profile');
  const at = {
    rearRest: stance.points.rearBall,
    frontFoot: stance.points.frontAnkle,
    lowerHand: stance.points.lowerHand,
    topHand: stance.points.topHand,
  };
  return stance.shortfalls.map(({ part, shortfall }) =>
    make({
      id: `short-${part}`,
      text: say('drawing.short', { by: scene.format.length(shortfall) }),
      lettering: 'strong',
      colour: 'change',
      anchor: to(at[part]),
      bounds: inner(scene.layout.windows.profile),
      toward: part === 'rearRest' ? Math.PI : 0,
      gap: 12,
    }),
  );
}

/** In a crew everyone's name stands over the head, or behind it where the sheet ends at the crown. */
function nameLabels(scene: Scene, make: Make): DrawnLabel[] {
  const to = projectorOf(scene, 'profile');
  const { fit, report, figures } = scene.picture;
  const bounds = inner(scene.layout.windows.profile);
  if (fit.seats.length === 1) return [];
  return fit.seats.flatMap((seat, index) => {
    const head = report.seats[index]?.stances.ready.points.headTop;
    const drawn = figures[index]?.head;
    if (!seat.athlete || !head || !drawn) return [];
    const crown = to(head);
    const middle = to(drawn.at);
    const lettering = index === scene.seat ? 'strong' : 'note';
    const isHigh = crown.y - OVER_HEAD - LETTERING[lettering].height < bounds.top;
    const back = { ...middle, x: middle.x - (middle.y - crown.y) };
    return make({
      id: `name-${index}`,
      text: shortName(seat.athlete.name),
      lettering,
      colour: index === scene.seat ? 'ink' : 'ink-soft',
      anchor: isHigh ? back : crown,
      bounds,
      toward: isHigh ? Math.PI : -Math.PI / 2,
      gap: OVER_HEAD,
    });
  });
}

/** Free paper between a head and its name, pixels. */
const OVER_HEAD = 8;

/** Height above the floorboard at which an empty seat says so, metres. */
const EMPTY_SEAT_WORDS = 0.6;

/** Letters of a name that stand over a head; more would lie on the next one's. */
const NAME_LETTERS = 22;

function shortName(name: string): string {
  const letters = [...name];
  return letters.length <= NAME_LETTERS ? name : `${letters.slice(0, NAME_LETTERS - 1).join('')}…`;
}

function nobodyLabel(scene: Scene, make: Make): DrawnLabel {
  const floor = seatFloor(scene);
  return make({
    id: 'nobody',
    text: say('drawing.nobody'),
    lettering: 'strong',
    colour: 'ink-soft',
    anchor: projectorOf(scene, 'profile')({ x: datumX(scene), y: 0, z: floor + EMPTY_SEAT_WORDS }),
    bounds: inner(scene.layout.windows.profile),
    toward: -Math.PI / 2,
    gap: 0,
  });
}

/** Names of the water and the centre of mass. */
function plainLabels(scene: Scene, make: Make): DrawnLabel[] {
  const { profile } = scene.layout.windows;
  const labels: DrawnLabel[] = [];
  const report = seatReport(scene);
  if (!report) labels.push(nobodyLabel(scene, make));
  else {
    labels.push(
      make({
        id: 'centre',
        text: say('drawing.centre-of-mass'),
        lettering: 'note',
        colour: 'ink-soft',
        anchor: projectorOf(scene, 'profile')(report.stances.ready.centreOfMass),
        bounds: inner(profile),
        toward: 0.2,
        gap: CENTRE_MARK_PX + 4,
      }),
    );
  }
  const afloat = afloatReady(scene.picture);
  if (afloat) {
    const { at, pixelsPerMetre } = scene.geometry.camera;
    const x = at.x - profile.width / 2 / pixelsPerMetre;
    const surface = projectorOf(scene, 'profile')({ x, y: 0, z: waterHeight(afloat, x) });
    labels.push(
      make({
        id: 'water',
        text: say('drawing.water'),
        lettering: 'note',
        colour: 'water-line',
        anchor: { x: surface.x + 6, y: surface.y },
        bounds: inner(profile),
        toward: -0.9,
        gap: 3,
      }),
    );
  }
  return labels;
}

function inner({ left, top, width, height }: ScreenRect): ScreenRect {
  return { left: left + 2, top: top + 2, width: width - 4, height: height - 4 };
}
