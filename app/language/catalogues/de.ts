// Every message in German, one file a subject.
export { default as archive } from '../../../assets/messages/de/archive.json' with { type: 'json' };
export { default as athleteFindings } from '../../../assets/messages/de/athlete-findings.json' with {
  type: 'json',
};
export { default as athletePage } from '../../../assets/messages/de/athlete-page.json' with { type: 'json' };
export { default as athletesTable } from '../../../assets/messages/de/athletes-table.json' with {
  type: 'json',
};
export { default as bench } from '../../../assets/messages/de/bench.json' with { type: 'json' };
export { default as board } from '../../../assets/messages/de/board.json' with { type: 'json' };
export { default as boat } from '../../../assets/messages/de/boat.json' with { type: 'json' };
export { default as boatKept } from '../../../assets/messages/de/boat-kept.json' with { type: 'json' };
export { default as clubLibrary } from '../../../assets/messages/de/club-library.json' with { type: 'json' };
export { default as conflictFields } from '../../../assets/messages/de/conflict-fields.json' with {
  type: 'json',
};
export { default as crew } from '../../../assets/messages/de/crew.json' with { type: 'json' };
export { default as drawing } from '../../../assets/messages/de/drawing.json' with { type: 'json' };
export { default as fields } from '../../../assets/messages/de/fields.json' with { type: 'json' };
export { default as find } from '../../../assets/messages/de/find.json' with { type: 'json' };
export { default as findings } from '../../../assets/messages/de/findings.json' with { type: 'json' };
export { default as fullSize } from '../../../assets/messages/de/full-size.json' with { type: 'json' };
export { default as glossary } from '../../../assets/messages/de/glossary.json' with { type: 'json' };
export { default as growth } from '../../../assets/messages/de/growth.json' with { type: 'json' };
export { default as hull } from '../../../assets/messages/de/hull.json' with { type: 'json' };
export { default as judgement } from '../../../assets/messages/de/judgement.json' with { type: 'json' };
export { default as measuring } from '../../../assets/messages/de/measuring.json' with { type: 'json' };
export { default as paddle } from '../../../assets/messages/de/paddle.json' with { type: 'json' };
export { default as photograph } from '../../../assets/messages/de/photograph.json' with { type: 'json' };
export { default as program } from '../../../assets/messages/de/program.json' with { type: 'json' };
export { default as proposal } from '../../../assets/messages/de/proposal.json' with { type: 'json' };
export { default as quantities } from '../../../assets/messages/de/quantities.json' with { type: 'json' };
export { default as roster } from '../../../assets/messages/de/roster.json' with { type: 'json' };
export { default as setOut } from '../../../assets/messages/de/set-out.json' with { type: 'json' };
export { default as sheet } from '../../../assets/messages/de/sheet.json' with { type: 'json' };
export { default as show } from '../../../assets/messages/de/show.json' with { type: 'json' };
export { default as stroke } from '../../../assets/messages/de/stroke.json' with { type: 'json' };
export { default as tapes } from '../../../assets/messages/de/tapes.json' with { type: 'json' };
export { default as transfer } from '../../../assets/messages/de/transfer.json' with { type: 'json' };
export { default as trial } from '../../../assets/messages/de/trial.json' with { type: 'json' };
export { default as underWay } from '../../../assets/messages/de/under-way.json' with { type: 'json' };
export { default as values } from '../../../assets/messages/de/values.json' with { type: 'json' };
export { default as workshopCut } from '../../../assets/messages/de/workshop-cut.json' with { type: 'json' };
export { default as workshopSheet } from '../../../assets/messages/de/workshop-sheet.json' with {
  type: 'json',
};
