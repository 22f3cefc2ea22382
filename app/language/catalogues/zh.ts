import archive from '../../../assets/messages/zh/archive.json' with { type: 'json' };
import athleteFindings from '../../../assets/messages/zh/athlete-findings.json' with { type: 'json' };
import athletePage from '../../../assets/messages/zh/athlete-page.json' with { type: 'json' };
import athletesTable from '../../../assets/messages/zh/athletes-table.json' with { type: 'json' };
import bench from '../../../assets/messages/zh/bench.json' with { type: 'json' };
import board from '../../../assets/messages/zh/board.json' with { type: 'json' };
import boat from '../../../assets/messages/zh/boat.json' with { type: 'json' };
import boatKept from '../../../assets/messages/zh/boat-kept.json' with { type: 'json' };
import clubLibrary from '../../../assets/messages/zh/club-library.json' with { type: 'json' };
import conflictFields from '../../../assets/messages/zh/conflict-fields.json' with { type: 'json' };
import crew from '../../../assets/messages/zh/crew.json' with { type: 'json' };
import drawing from '../../../assets/messages/zh/drawing.json' with { type: 'json' };
import fields from '../../../assets/messages/zh/fields.json' with { type: 'json' };
import findings from '../../../assets/messages/zh/findings.json' with { type: 'json' };
import fullSize from '../../../assets/messages/zh/full-size.json' with { type: 'json' };
import glossary from '../../../assets/messages/zh/glossary.json' with { type: 'json' };
import growth from '../../../assets/messages/zh/growth.json' with { type: 'json' };
import hull from '../../../assets/messages/zh/hull.json' with { type: 'json' };
import judgement from '../../../assets/messages/zh/judgement.json' with { type: 'json' };
import measuring from '../../../assets/messages/zh/measuring.json' with { type: 'json' };
import paddle from '../../../assets/messages/zh/paddle.json' with { type: 'json' };
import photograph from '../../../assets/messages/zh/photograph.json' with { type: 'json' };
import program from '../../../assets/messages/zh/program.json' with { type: 'json' };
import proposal from '../../../assets/messages/zh/proposal.json' with { type: 'json' };
import quantities from '../../../assets/messages/zh/quantities.json' with { type: 'json' };
import reach from '../../../assets/messages/zh/reach.json' with { type: 'json' };
import roster from '../../../assets/messages/zh/roster.json' with { type: 'json' };
import setOut from '../../../assets/messages/zh/set-out.json' with { type: 'json' };
import sheet from '../../../assets/messages/zh/sheet.json' with { type: 'json' };
import show from '../../../assets/messages/zh/show.json' with { type: 'json' };
import stroke from '../../../assets/messages/zh/stroke.json' with { type: 'json' };
import tapes from '../../../assets/messages/zh/tapes.json' with { type: 'json' };
import transfer from '../../../assets/messages/zh/transfer.json' with { type: 'json' };
import trial from '../../../assets/messages/zh/trial.json' with { type: 'json' };
import underWay from '../../../assets/messages/zh/under-way.json' with { type: 'json' };
import values from '../../../assets/messages/zh/values.json' with { type: 'json' };
import workshopCut from '../../../assets/messages/zh/workshop-cut.json' with { type: 'json' };
import workshopSheet from '../../../assets/messages/zh/workshop-sheet.json' with { type: 'json' };

/** Every message in Simplified Chinese, one file a subject. */
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
