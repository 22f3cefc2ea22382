import type { TapeMeasure } from '../document/athlete-schema.ts';

/**
 * What clubs call a column besides its own name: English, German, Hungarian, Spanish, Polish, simplified Chinese. Everyday
 * headings of such lists, no source. Letter case, accents, spaces and marks do not matter.
 */
export const HEADING_ALIASES: Readonly<
  Record<'id' | 'name' | 'side' | 'sex' | 'bornOn' | 'measuredOn' | 'stature' | 'mass', readonly string[]>
> = {
  id: ['ID', 'Kennung', 'Azonosító', 'Identificador', 'Identyfikator', '标识'],
  name: [
    ...['Athlete', 'Paddler', 'Full name', 'Sportler', 'Sportlerin', 'Athlet', 'Athletin', 'Név', 'Sportoló'],
    ...['Versenyző', 'Nombre', 'Nombre y apellidos', 'Deportista', 'Atleta', 'Imię i nazwisko', 'Nazwisko'],
    ...['Zawodnik', 'Zawodniczka', '姓名', '名字', '运动员'],
  ],
  side: [
    ...['Paddles on', 'Paddles on the', 'Paddle side', 'Seite', 'Paddelseite', 'Oldal', 'Lapátoldal', 'Lado'],
    ...['Strona', 'Strona wiosłowania', '侧', '划桨侧', '左右'],
  ],
  sex: ['Gender', 'Geschlecht', 'Nem', 'Sexo', 'Género', 'Płeć', '性别'],
  bornOn: [
    ...['Born', 'Birth date', 'Date of birth', 'DOB', 'Birthday', 'Geboren', 'Geboren am', 'Geburtsdatum'],
    ...[
      'Született',
      'Születési dátum',
      'Születési idő',
      'Fecha de nacimiento',
      'Nacimiento',
      'Nacido',
      'Nacida',
    ],
    ...['Data urodzenia', 'Urodzony', 'Urodzona', 'Ur.', '出生日期', '生日'],
  ],
  measuredOn: [
    ...['Measured', 'Date measured', 'Measurement date', 'Gemessen', 'Gemessen am', 'Messdatum', 'Mérve'],
    ...[
      'Mérés dátuma',
      'Mérés napja',
      'Medido',
      'Medido el',
      'Fecha de medición',
      'Zmierzono',
      'Data pomiaru',
      '测量日期',
    ],
  ],
  stature: [
    ...['Height', 'Body height', 'Größe', 'Groesse', 'Körpergröße', 'Magasság', 'Testmagasság', 'Estatura'],
    ...['Altura', 'Talla', 'Wzrost', '身高'],
  ],
  mass: [
    ...['Weight', 'Body weight', 'Body mass', 'Gewicht', 'Körpergewicht', 'Masse', 'Körpermasse', 'Súly'],
    ...[
      'Testsúly',
      'Tömeg',
      'Testtömeg',
      'Peso',
      'Peso corporal',
      'Masa',
      'Masa corporal',
      'Waga',
      'Masa ciała',
      '体重',
    ],
  ],
};

/** The same for the tape measures: their names in the program's languages, and what clubs call them besides. */
export const TAPE_ALIASES: Readonly<Record<TapeMeasure, readonly string[]>> = {
  kneeHeightSitting: [
    'Kniehöhe im Sitzen',
    'Térdmagasság ülve',
    'Altura de la rodilla, sentado',
    'Wysokość kolana, siedząc',
    'Wysokość kolana w siadzie',
    '坐姿膝高',
    'Knee height',
    'Kniehöhe',
    'Térdmagasság',
    'Altura de rodilla',
    'Wysokość kolana',
    '膝高',
  ],
  buttockKneeLength: ['Gesäß bis Knie', 'Fartól a térdig', 'Nalga a rodilla', 'Pośladek–kolano', '臀到膝'],
  shoulderHeight: [
    'Schulterhöhe',
    'Vállmagasság',
    'Altura del hombro',
    'Wysokość barku',
    '肩高',
    'Wysokość barków',
  ],
  armSpan: [
    'Armspannweite',
    'Karfesztávolság',
    'Envergadura',
    'Rozpiętość ramion',
    '臂展',
    'Span',
    'Wingspan',
    'Spannweite',
    'Karfesztáv',
  ],
  footLength: ['Fußlänge', 'Lábfejhossz', 'Longitud del pie', 'Długość stopy', '足长', 'Foot', '脚长'],
  kneelingHeight: [
    'Höhe im Knien',
    'Térdelőmagasság',
    'Altura de rodillas',
    'Wysokość w klęku',
    '跪高',
    'Kniend Höhe',
    '跪姿高',
  ],
  crotchHeight: ['Schritthöhe', 'Ágyékmagasság', 'Altura de la entrepierna', 'Wysokość krocza', '胯高'],
  tibialHeight: ['Schienbeinhöhe', 'Sípcsontmagasság', 'Altura tibial', 'Wysokość piszczeli', '胫骨高'],
  poplitealHeight: [
    'Kniekehle',
    'Térdhajlat magassága',
    'Corva',
    'Dół podkolanowy',
    'Wysokość dołu podkolanowego',
    '腘窝高',
  ],
  sittingHeight: [
    'Sitzhöhe',
    'Ülőmagasság',
    'Altura sentado',
    'Wysokość siedząc',
    '坐高',
    'Talla sentado',
    'Wysokość siedząca',
  ],
  biacromialBreadth: ['Schulterbreite', 'Vállszélesség', 'Anchura de hombros', 'Szerokość barków', '肩宽'],
  kneeToHipLength: ['Knie bis Hüfte', 'Térdtől csípőig', 'Rodilla a cadera', 'Kolano–biodro', '膝到髋'],
};

/** How the heading of a tape measure's spread ends. */
export const SPREAD_WORDS = ['spread', 'Streuung', 'szórás', 'dispersión', 'rozrzut', '离散'] as const;
/** How the heading of the day on which a tape measure was taken ends. */
export const TAKEN_WORDS = ['taken on', 'gemessen am', 'mérve', 'medido el', 'zmierzono', '测量日'] as const;
