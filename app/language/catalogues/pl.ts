// Every message in Polish, one file a subject.
export { default as archive } from '../../../assets/messages/pl/archive.json' with { type: 'json' };
export { default as athleteFindings } from '../../../assets/messages/pl/athlete-findings.json' with {
  type: 'json',
};
export { default as athletePage } from '../../../assets/messages/pl/athlete-page.json' with { type: 'json' };
export { default as athletesTable } from '../../../assets/messages/pl/athletes-table.json' with {
  type: 'json',
};
export { default as bench } from '../../../assets/messages/pl/bench.json' with { type: 'json' };
export { default as board } from '../../../assets/messages/pl/board.json' with { type: 'json' };
export { default as boat } from '../../../assets/messages/pl/boat.json' with { type: 'json' };
export { default as boatKept } from '../../../assets/messages/pl/boat-kept.json' with { type: 'json' };
export { default as clubLibrary } from '../../../assets/messages/pl/club-library.json' with { type: 'json' };
export { default as conflictFields } from '../../../assets/messages/pl/conflict-fields.json' with {
  type: 'json',
};
export { default as crew } from '../../../assets/messages/pl/crew.json' with { type: 'json' };
export { default as drawing } from '../../../assets/messages/pl/drawing.json' with { type: 'json' };
export { default as fields } from '../../../assets/messages/pl/fields.json' with { type: 'json' };
export { default as find } from '../../../assets/messages/pl/find.json' with { type: 'json' };
export { default as findings } from '../../../assets/messages/pl/findings.json' with { type: 'json' };
export { default as fullSize } from '../../../assets/messages/pl/full-size.json' with { type: 'json' };
export { default as glossary } from '../../../assets/messages/pl/glossary.json' with { type: 'json' };
export { default as growth } from '../../../assets/messages/pl/growth.json' with { type: 'json' };
export { default as hull } from '../../../assets/messages/pl/hull.json' with { type: 'json' };
export { default as judgement } from '../../../assets/messages/pl/judgement.json' with { type: 'json' };
export { default as measuring } from '../../../assets/messages/pl/measuring.json' with { type: 'json' };
export { default as paddle } from '../../../assets/messages/pl/paddle.json' with { type: 'json' };
export { default as photograph } from '../../../assets/messages/pl/photograph.json' with { type: 'json' };
export { default as program } from '../../../assets/messages/pl/program.json' with { type: 'json' };
export { default as proposal } from '../../../assets/messages/pl/proposal.json' with { type: 'json' };
export { default as quantities } from '../../../assets/messages/pl/quantities.json' with { type: 'json' };
export { default as roster } from '../../../assets/messages/pl/roster.json' with { type: 'json' };
export { default as setOut } from '../../../assets/messages/pl/set-out.json' with { type: 'json' };
export { default as sheet } from '../../../assets/messages/pl/sheet.json' with { type: 'json' };
export { default as show } from '../../../assets/messages/pl/show.json' with { type: 'json' };
export { default as stroke } from '../../../assets/messages/pl/stroke.json' with { type: 'json' };
export { default as tapes } from '../../../assets/messages/pl/tapes.json' with { type: 'json' };
export { default as transfer } from '../../../assets/messages/pl/transfer.json' with { type: 'json' };
export { default as trial } from '../../../assets/messages/pl/trial.json' with { type: 'json' };
export { default as underWay } from '../../../assets/messages/pl/under-way.json' with { type: 'json' };
export { default as values } from '../../../assets/messages/pl/values.json' with { type: 'json' };
export { default as workshopCut } from '../../../assets/messages/pl/workshop-cut.json' with { type: 'json' };
export { default as workshopSheet } from '../../../assets/messages/pl/workshop-sheet.json' with {
  type: 'json',
};
