import archive from '../../../assets/messages/de/archive.json' with { type: 'json' };
import athleteFindings from '../../../assets/messages/de/athlete-findings.json' with { type: 'json' };
import athletePage from '../../../assets/messages/de/athlete-page.json' with { type: 'json' };
import athletesTable from '../../../assets/messages/de/athletes-table.json' with { type: 'json' };
import bench from '../../../assets/messages/de/bench.json' with { type: 'json' };
import board from '../../../assets/messages/de/board.json' with { type: 'json' };
import boat from '../../../assets/messages/de/boat.json' with { type: 'json' };
import boatKept from '../../../assets/messages/de/boat-kept.json' with { type: 'json' };
import clubLibrary from '../../../assets/messages/de/club-library.json' with { type: 'json' };
import conflictFields from '../../../assets/messages/de/conflict-fields.json' with { type: 'json' };
import crew from '../../../assets/messages/de/crew.json' with { type: 'json' };
import drawing from '../../../assets/messages/de/drawing.json' with { type: 'json' };
import fields from '../../../assets/messages/de/fields.json' with { type: 'json' };
import findings from '../../../assets/messages/de/findings.json' with { type: 'json' };
import fullSize from '../../../assets/messages/de/full-size.json' with { type: 'json' };
import glossary from '../../../assets/messages/de/glossary.json' with { type: 'json' };
import growth from '../../../assets/messages/de/growth.json' with { type: 'json' };
import hull from '../../../assets/messages/de/hull.json' with { type: 'json' };
import judgement from '../../../assets/messages/de/judgement.json' with { type: 'json' };
import measuring from '../../../assets/messages/de/measuring.json' with { type: 'json' };
import paddle from '../../../assets/messages/de/paddle.json' with { type: 'json' };
import photograph from '../../../assets/messages/de/photograph.json' with { type: 'json' };
import program from '../../../assets/messages/de/program.json' with { type: 'json' };
import proposal from '../../../assets/messages/de/proposal.json' with { type: 'json' };
import quantities from '../../../assets/messages/de/quantities.json' with { type: 'json' };
import reach from '../../../assets/messages/de/reach.json' with { type: 'json' };
import roster from '../../../assets/messages/de/roster.json' with { type: 'json' };
import setOut from '../../../assets/messages/de/set-out.json' with { type: 'json' };
import sheet from '../../../assets/messages/de/sheet.json' with { type: 'json' };
import show from '../../../assets/messages/de/show.json' with { type: 'json' };
import stroke from '../../../assets/messages/de/stroke.json' with { type: 'json' };
import tapes from '../../../assets/messages/de/tapes.json' with { type: 'json' };
import transfer from '../../../assets/messages/de/transfer.json' with { type: 'json' };
import trial from '../../../assets/messages/de/trial.json' with { type: 'json' };
import underWay from '../../../assets/messages/de/under-way.json' with { type: 'json' };
import values from '../../../assets/messages/de/values.json' with { type: 'json' };
import workshopCut from '../../../assets/messages/de/workshop-cut.json' with { type: 'json' };
import workshopSheet from '../../../assets/messages/de/workshop-sheet.json' with { type: 'json' };

/** Every message in German, one file a subject. */
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
