import archive from '../../../assets/messages/es/archive.json' with { type: 'json' };
import athleteFindings from '../../../assets/messages/es/athlete-findings.json' with { type: 'json' };
import athletePage from '../../../assets/messages/es/athlete-page.json' with { type: 'json' };
import athletesTable from '../../../assets/messages/es/athletes-table.json' with { type: 'json' };
import bench from '../../../assets/messages/es/bench.json' with { type: 'json' };
import board from '../../../assets/messages/es/board.json' with { type: 'json' };
import boat from '../../../assets/messages/es/boat.json' with { type: 'json' };
import boatKept from '../../../assets/messages/es/boat-kept.json' with { type: 'json' };
import clubLibrary from '../../../assets/messages/es/club-library.json' with { type: 'json' };
import conflictFields from '../../../assets/messages/es/conflict-fields.json' with { type: 'json' };
import crew from '../../../assets/messages/es/crew.json' with { type: 'json' };
import drawing from '../../../assets/messages/es/drawing.json' with { type: 'json' };
import fields from '../../../assets/messages/es/fields.json' with { type: 'json' };
import findings from '../../../assets/messages/es/findings.json' with { type: 'json' };
import fullSize from '../../../assets/messages/es/full-size.json' with { type: 'json' };
import glossary from '../../../assets/messages/es/glossary.json' with { type: 'json' };
import growth from '../../../assets/messages/es/growth.json' with { type: 'json' };
import hull from '../../../assets/messages/es/hull.json' with { type: 'json' };
import judgement from '../../../assets/messages/es/judgement.json' with { type: 'json' };
import measuring from '../../../assets/messages/es/measuring.json' with { type: 'json' };
import paddle from '../../../assets/messages/es/paddle.json' with { type: 'json' };
import photograph from '../../../assets/messages/es/photograph.json' with { type: 'json' };
import program from '../../../assets/messages/es/program.json' with { type: 'json' };
import proposal from '../../../assets/messages/es/proposal.json' with { type: 'json' };
import quantities from '../../../assets/messages/es/quantities.json' with { type: 'json' };
import reach from '../../../assets/messages/es/reach.json' with { type: 'json' };
import roster from '../../../assets/messages/es/roster.json' with { type: 'json' };
import setOut from '../../../assets/messages/es/set-out.json' with { type: 'json' };
import sheet from '../../../assets/messages/es/sheet.json' with { type: 'json' };
import show from '../../../assets/messages/es/show.json' with { type: 'json' };
import stroke from '../../../assets/messages/es/stroke.json' with { type: 'json' };
import tapes from '../../../assets/messages/es/tapes.json' with { type: 'json' };
import transfer from '../../../assets/messages/es/transfer.json' with { type: 'json' };
import trial from '../../../assets/messages/es/trial.json' with { type: 'json' };
import underWay from '../../../assets/messages/es/under-way.json' with { type: 'json' };
import values from '../../../assets/messages/es/values.json' with { type: 'json' };
import workshopCut from '../../../assets/messages/es/workshop-cut.json' with { type: 'json' };
import workshopSheet from '../../../assets/messages/es/workshop-sheet.json' with { type: 'json' };

/** Every message in Spanish, one file a subject. */
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
