// Every message in Spanish, one file a subject.
export { default as archive } from '../../../assets/messages/es/archive.json' with { type: 'json' };
export { default as athleteFindings } from '../../../assets/messages/es/athlete-findings.json' with {
  type: 'json',
};
export { default as athletePage } from '../../../assets/messages/es/athlete-page.json' with { type: 'json' };
export { default as athletesTable } from '../../../assets/messages/es/athletes-table.json' with {
  type: 'json',
};
export { default as bench } from '../../../assets/messages/es/bench.json' with { type: 'json' };
export { default as board } from '../../../assets/messages/es/board.json' with { type: 'json' };
export { default as boat } from '../../../assets/messages/es/boat.json' with { type: 'json' };
export { default as boatKept } from '../../../assets/messages/es/boat-kept.json' with { type: 'json' };
export { default as clubLibrary } from '../../../assets/messages/es/club-library.json' with { type: 'json' };
export { default as conflictFields } from '../../../assets/messages/es/conflict-fields.json' with {
  type: 'json',
};
export { default as crew } from '../../../assets/messages/es/crew.json' with { type: 'json' };
export { default as drawing } from '../../../assets/messages/es/drawing.json' with { type: 'json' };
export { default as fields } from '../../../assets/messages/es/fields.json' with { type: 'json' };
export { default as find } from '../../../assets/messages/es/find.json' with { type: 'json' };
export { default as findings } from '../../../assets/messages/es/findings.json' with { type: 'json' };
export { default as fullSize } from '../../../assets/messages/es/full-size.json' with { type: 'json' };
export { default as glossary } from '../../../assets/messages/es/glossary.json' with { type: 'json' };
export { default as growth } from '../../../assets/messages/es/growth.json' with { type: 'json' };
export { default as hull } from '../../../assets/messages/es/hull.json' with { type: 'json' };
export { default as judgement } from '../../../assets/messages/es/judgement.json' with { type: 'json' };
export { default as measuring } from '../../../assets/messages/es/measuring.json' with { type: 'json' };
export { default as paddle } from '../../../assets/messages/es/paddle.json' with { type: 'json' };
export { default as photograph } from '../../../assets/messages/es/photograph.json' with { type: 'json' };
export { default as program } from '../../../assets/messages/es/program.json' with { type: 'json' };
export { default as proposal } from '../../../assets/messages/es/proposal.json' with { type: 'json' };
export { default as quantities } from '../../../assets/messages/es/quantities.json' with { type: 'json' };
export { default as roster } from '../../../assets/messages/es/roster.json' with { type: 'json' };
export { default as setOut } from '../../../assets/messages/es/set-out.json' with { type: 'json' };
export { default as sheet } from '../../../assets/messages/es/sheet.json' with { type: 'json' };
export { default as show } from '../../../assets/messages/es/show.json' with { type: 'json' };
export { default as stroke } from '../../../assets/messages/es/stroke.json' with { type: 'json' };
export { default as tapes } from '../../../assets/messages/es/tapes.json' with { type: 'json' };
export { default as transfer } from '../../../assets/messages/es/transfer.json' with { type: 'json' };
export { default as trial } from '../../../assets/messages/es/trial.json' with { type: 'json' };
export { default as underWay } from '../../../assets/messages/es/under-way.json' with { type: 'json' };
export { default as values } from '../../../assets/messages/es/values.json' with { type: 'json' };
export { default as workshopCut } from '../../../assets/messages/es/workshop-cut.json' with { type: 'json' };
export { default as workshopSheet } from '../../../assets/messages/es/workshop-sheet.json' with {
  type: 'json',
};
