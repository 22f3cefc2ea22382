// Every message in Hungarian, one file a subject.
export { default as archive } from '../../../assets/messages/hu/archive.json' with { type: 'json' };
export { default as athleteFindings } from '../../../assets/messages/hu/athlete-findings.json' with {
  type: 'json',
};
export { default as athletePage } from '../../../assets/messages/hu/athlete-page.json' with { type: 'json' };
export { default as athletesTable } from '../../../assets/messages/hu/athletes-table.json' with {
  type: 'json',
};
export { default as bench } from '../../../assets/messages/hu/bench.json' with { type: 'json' };
export { default as board } from '../../../assets/messages/hu/board.json' with { type: 'json' };
export { default as boat } from '../../../assets/messages/hu/boat.json' with { type: 'json' };
export { default as boatKept } from '../../../assets/messages/hu/boat-kept.json' with { type: 'json' };
export { default as clubLibrary } from '../../../assets/messages/hu/club-library.json' with { type: 'json' };
export { default as conflictFields } from '../../../assets/messages/hu/conflict-fields.json' with {
  type: 'json',
};
export { default as crew } from '../../../assets/messages/hu/crew.json' with { type: 'json' };
export { default as drawing } from '../../../assets/messages/hu/drawing.json' with { type: 'json' };
export { default as fields } from '../../../assets/messages/hu/fields.json' with { type: 'json' };
export { default as find } from '../../../assets/messages/hu/find.json' with { type: 'json' };
export { default as findings } from '../../../assets/messages/hu/findings.json' with { type: 'json' };
export { default as fullSize } from '../../../assets/messages/hu/full-size.json' with { type: 'json' };
export { default as glossary } from '../../../assets/messages/hu/glossary.json' with { type: 'json' };
export { default as growth } from '../../../assets/messages/hu/growth.json' with { type: 'json' };
export { default as hull } from '../../../assets/messages/hu/hull.json' with { type: 'json' };
export { default as judgement } from '../../../assets/messages/hu/judgement.json' with { type: 'json' };
export { default as measuring } from '../../../assets/messages/hu/measuring.json' with { type: 'json' };
export { default as paddle } from '../../../assets/messages/hu/paddle.json' with { type: 'json' };
export { default as photograph } from '../../../assets/messages/hu/photograph.json' with { type: 'json' };
export { default as program } from '../../../assets/messages/hu/program.json' with { type: 'json' };
export { default as proposal } from '../../../assets/messages/hu/proposal.json' with { type: 'json' };
export { default as quantities } from '../../../assets/messages/hu/quantities.json' with { type: 'json' };
export { default as roster } from '../../../assets/messages/hu/roster.json' with { type: 'json' };
export { default as setOut } from '../../../assets/messages/hu/set-out.json' with { type: 'json' };
export { default as sheet } from '../../../assets/messages/hu/sheet.json' with { type: 'json' };
export { default as show } from '../../../assets/messages/hu/show.json' with { type: 'json' };
export { default as stroke } from '../../../assets/messages/hu/stroke.json' with { type: 'json' };
export { default as tapes } from '../../../assets/messages/hu/tapes.json' with { type: 'json' };
export { default as transfer } from '../../../assets/messages/hu/transfer.json' with { type: 'json' };
export { default as trial } from '../../../assets/messages/hu/trial.json' with { type: 'json' };
export { default as underWay } from '../../../assets/messages/hu/under-way.json' with { type: 'json' };
export { default as values } from '../../../assets/messages/hu/values.json' with { type: 'json' };
export { default as workshopCut } from '../../../assets/messages/hu/workshop-cut.json' with { type: 'json' };
export { default as workshopSheet } from '../../../assets/messages/hu/workshop-sheet.json' with {
  type: 'json',
};
