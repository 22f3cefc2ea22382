import archive from '../../../assets/messages/hu/archive.json' with { type: 'json' };
import athleteFindings from '../../../assets/messages/hu/athlete-findings.json' with { type: 'json' };
import athletePage from '../../../assets/messages/hu/athlete-page.json' with { type: 'json' };
import athletesTable from '../../../assets/messages/hu/athletes-table.json' with { type: 'json' };
import bench from '../../../assets/messages/hu/bench.json' with { type: 'json' };
import board from '../../../assets/messages/hu/board.json' with { type: 'json' };
import boat from '../../../assets/messages/hu/boat.json' with { type: 'json' };
import boatKept from '../../../assets/messages/hu/boat-kept.json' with { type: 'json' };
import clubLibrary from '../../../assets/messages/hu/club-library.json' with { type: 'json' };
import conflictFields from '../../../assets/messages/hu/conflict-fields.json' with { type: 'json' };
import crew from '../../../assets/messages/hu/crew.json' with { type: 'json' };
import drawing from '../../../assets/messages/hu/drawing.json' with { type: 'json' };
import fields from '../../../assets/messages/hu/fields.json' with { type: 'json' };
import findings from '../../../assets/messages/hu/findings.json' with { type: 'json' };
import fullSize from '../../../assets/messages/hu/full-size.json' with { type: 'json' };
import glossary from '../../../assets/messages/hu/glossary.json' with { type: 'json' };
import growth from '../../../assets/messages/hu/growth.json' with { type: 'json' };
import hull from '../../../assets/messages/hu/hull.json' with { type: 'json' };
import judgement from '../../../assets/messages/hu/judgement.json' with { type: 'json' };
import measuring from '../../../assets/messages/hu/measuring.json' with { type: 'json' };
import paddle from '../../../assets/messages/hu/paddle.json' with { type: 'json' };
import photograph from '../../../assets/messages/hu/photograph.json' with { type: 'json' };
import program from '../../../assets/messages/hu/program.json' with { type: 'json' };
import proposal from '../../../assets/messages/hu/proposal.json' with { type: 'json' };
import quantities from '../../../assets/messages/hu/quantities.json' with { type: 'json' };
import reach from '../../../assets/messages/hu/reach.json' with { type: 'json' };
import roster from '../../../assets/messages/hu/roster.json' with { type: 'json' };
import setOut from '../../../assets/messages/hu/set-out.json' with { type: 'json' };
import sheet from '../../../assets/messages/hu/sheet.json' with { type: 'json' };
import show from '../../../assets/messages/hu/show.json' with { type: 'json' };
import stroke from '../../../assets/messages/hu/stroke.json' with { type: 'json' };
import tapes from '../../../assets/messages/hu/tapes.json' with { type: 'json' };
import transfer from '../../../assets/messages/hu/transfer.json' with { type: 'json' };
import trial from '../../../assets/messages/hu/trial.json' with { type: 'json' };
import underWay from '../../../assets/messages/hu/under-way.json' with { type: 'json' };
import values from '../../../assets/messages/hu/values.json' with { type: 'json' };
import workshopCut from '../../../assets/messages/hu/workshop-cut.json' with { type: 'json' };
import workshopSheet from '../../../assets/messages/hu/workshop-sheet.json' with { type: 'json' };

/** Every message in Hungarian, one file a subject. */
export const messages = {
  ...archive,
  ...athleteFindings,
  ...athletePage,
  ...athletesTable,
  ...bench,
  ...board,
  ...boat,
  ...boatKept,
  ...clubLibrary,
  ...conflictFields,
  ...crew,
  ...drawing,
  ...fields,
  ...findings,
  ...fullSize,
  ...glossary,
  ...growth,
  ...hull,
  ...judgement,
  ...measuring,
  ...paddle,
  ...photograph,
  ...program,
  ...proposal,
  ...quantities,
  ...reach,
  ...roster,
  ...setOut,
  ...sheet,
  ...show,
  ...stroke,
  ...tapes,
  ...transfer,
  ...trial,
  ...underWay,
  ...values,
  ...workshopCut,
  ...workshopSheet,
};
