import archive from '../../../assets/messages/pl/archive.json' with { type: 'json' };
import athleteFindings from '../../../assets/messages/pl/athlete-findings.json' with { type: 'json' };
import athletePage from '../../../assets/messages/pl/athlete-page.json' with { type: 'json' };
import athletesTable from '../../../assets/messages/pl/athletes-table.json' with { type: 'json' };
import bench from '../../../assets/messages/pl/bench.json' with { type: 'json' };
import board from '../../../assets/messages/pl/board.json' with { type: 'json' };
import boat from '../../../assets/messages/pl/boat.json' with { type: 'json' };
import boatKept from '../../../assets/messages/pl/boat-kept.json' with { type: 'json' };
import clubLibrary from '../../../assets/messages/pl/club-library.json' with { type: 'json' };
import conflictFields from '../../../assets/messages/pl/conflict-fields.json' with { type: 'json' };
import crew from '../../../assets/messages/pl/crew.json' with { type: 'json' };
import drawing from '../../../assets/messages/pl/drawing.json' with { type: 'json' };
import fields from '../../../assets/messages/pl/fields.json' with { type: 'json' };
import findings from '../../../assets/messages/pl/findings.json' with { type: 'json' };
import fullSize from '../../../assets/messages/pl/full-size.json' with { type: 'json' };
import glossary from '../../../assets/messages/pl/glossary.json' with { type: 'json' };
import growth from '../../../assets/messages/pl/growth.json' with { type: 'json' };
import hull from '../../../assets/messages/pl/hull.json' with { type: 'json' };
import judgement from '../../../assets/messages/pl/judgement.json' with { type: 'json' };
import measuring from '../../../assets/messages/pl/measuring.json' with { type: 'json' };
import paddle from '../../../assets/messages/pl/paddle.json' with { type: 'json' };
import photograph from '../../../assets/messages/pl/photograph.json' with { type: 'json' };
import program from '../../../assets/messages/pl/program.json' with { type: 'json' };
import proposal from '../../../assets/messages/pl/proposal.json' with { type: 'json' };
import quantities from '../../../assets/messages/pl/quantities.json' with { type: 'json' };
import reach from '../../../assets/messages/pl/reach.json' with { type: 'json' };
import roster from '../../../assets/messages/pl/roster.json' with { type: 'json' };
import setOut from '../../../assets/messages/pl/set-out.json' with { type: 'json' };
import sheet from '../../../assets/messages/pl/sheet.json' with { type: 'json' };
import show from '../../../assets/messages/pl/show.json' with { type: 'json' };
import stroke from '../../../assets/messages/pl/stroke.json' with { type: 'json' };
import tapes from '../../../assets/messages/pl/tapes.json' with { type: 'json' };
import transfer from '../../../assets/messages/pl/transfer.json' with { type: 'json' };
import trial from '../../../assets/messages/pl/trial.json' with { type: 'json' };
import underWay from '../../../assets/messages/pl/under-way.json' with { type: 'json' };
import values from '../../../assets/messages/pl/values.json' with { type: 'json' };
import workshopCut from '../../../assets/messages/pl/workshop-cut.json' with { type: 'json' };
import workshopSheet from '../../../assets/messages/pl/workshop-sheet.json' with { type: 'json' };

/** Every message in Polish, one file a subject. */
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
