import archive from '../../../assets/messages/en/archive.json' with { type: 'json' };
import athleteFindings from '../../../assets/messages/en/athlete-findings.json' with { type: 'json' };
import athletePage from '../../../assets/messages/en/athlete-page.json' with { type: 'json' };
import athletesTable from '../../../assets/messages/en/athletes-table.json' with { type: 'json' };
import bench from '../../../assets/messages/en/bench.json' with { type: 'json' };
import board from '../../../assets/messages/en/board.json' with { type: 'json' };
import boat from '../../../assets/messages/en/boat.json' with { type: 'json' };
import boatKept from '../../../assets/messages/en/boat-kept.json' with { type: 'json' };
import clubLibrary from '../../../assets/messages/en/club-library.json' with { type: 'json' };
import conflictFields from '../../../assets/messages/en/conflict-fields.json' with { type: 'json' };
import crew from '../../../assets/messages/en/crew.json' with { type: 'json' };
import drawing from '../../../assets/messages/en/drawing.json' with { type: 'json' };
import fields from '../../../assets/messages/en/fields.json' with { type: 'json' };
import findings from '../../../assets/messages/en/findings.json' with { type: 'json' };
import fullSize from '../../../assets/messages/en/full-size.json' with { type: 'json' };
import glossary from '../../../assets/messages/en/glossary.json' with { type: 'json' };
import growth from '../../../assets/messages/en/growth.json' with { type: 'json' };
import hull from '../../../assets/messages/en/hull.json' with { type: 'json' };
import judgement from '../../../assets/messages/en/judgement.json' with { type: 'json' };
import measuring from '../../../assets/messages/en/measuring.json' with { type: 'json' };
import paddle from '../../../assets/messages/en/paddle.json' with { type: 'json' };
import photograph from '../../../assets/messages/en/photograph.json' with { type: 'json' };
import program from '../../../assets/messages/en/program.json' with { type: 'json' };
import proposal from '../../../assets/messages/en/proposal.json' with { type: 'json' };
import quantities from '../../../assets/messages/en/quantities.json' with { type: 'json' };
import reach from '../../../assets/messages/en/reach.json' with { type: 'json' };
import roster from '../../../assets/messages/en/roster.json' with { type: 'json' };
import setOut from '../../../assets/messages/en/set-out.json' with { type: 'json' };
import sheet from '../../../assets/messages/en/sheet.json' with { type: 'json' };
import show from '../../../assets/messages/en/show.json' with { type: 'json' };
import stroke from '../../../assets/messages/en/stroke.json' with { type: 'json' };
import tapes from '../../../assets/messages/en/tapes.json' with { type: 'json' };
import transfer from '../../../assets/messages/en/transfer.json' with { type: 'json' };
import trial from '../../../assets/messages/en/trial.json' with { type: 'json' };
import underWay from '../../../assets/messages/en/under-way.json' with { type: 'json' };
import values from '../../../assets/messages/en/values.json' with { type: 'json' };
import workshopCut from '../../../assets/messages/en/workshop-cut.json' with { type: 'json' };
import workshopSheet from '../../../assets/messages/en/workshop-sheet.json' with { type: 'json' };

/** Every message in English, one file a subject. */
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
