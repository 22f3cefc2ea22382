// Every message in English, one file a subject.
export { default as archive } from '../../../assets/messages/en/archive.json' with { type: 'json' };
export { default as athleteFindings } from '../../../assets/messages/en/athlete-findings.json' with {
  type: 'json',
};
export { default as athletePage } from '../../../assets/messages/en/athlete-page.json' with { type: 'json' };
export { default as athletesTable } from '../../../assets/messages/en/athletes-table.json' with {
  type: 'json',
};
export { default as bench } from '../../../assets/messages/en/bench.json' with { type: 'json' };
export { default as board } from '../../../assets/messages/en/board.json' with { type: 'json' };
export { default as boat } from '../../../assets/messages/en/boat.json' with { type: 'json' };
export { default as boatKept } from '../../../assets/messages/en/boat-kept.json' with { type: 'json' };
export { default as clubLibrary } from '../../../assets/messages/en/club-library.json' with { type: 'json' };
export { default as conflictFields } from '../../../assets/messages/en/conflict-fields.json' with {
  type: 'json',
};
export { default as crew } from '../../../assets/messages/en/crew.json' with { type: 'json' };
export { default as drawing } from '../../../assets/messages/en/drawing.json' with { type: 'json' };
export { default as fields } from '../../../assets/messages/en/fields.json' with { type: 'json' };
export { default as find } from '../../../assets/messages/en/find.json' with { type: 'json' };
export { default as findings } from '../../../assets/messages/en/findings.json' with { type: 'json' };
export { default as fullSize } from '../../../assets/messages/en/full-size.json' with { type: 'json' };
export { default as glossary } from '../../../assets/messages/en/glossary.json' with { type: 'json' };
export { default as growth } from '../../../assets/messages/en/growth.json' with { type: 'json' };
export { default as hull } from '../../../assets/messages/en/hull.json' with { type: 'json' };
export { default as judgement } from '../../../assets/messages/en/judgement.json' with { type: 'json' };
export { default as measuring } from '../../../assets/messages/en/measuring.json' with { type: 'json' };
export { default as paddle } from '../../../assets/messages/en/paddle.json' with { type: 'json' };
export { default as photograph } from '../../../assets/messages/en/photograph.json' with { type: 'json' };
export { default as program } from '../../../assets/messages/en/program.json' with { type: 'json' };
export { default as proposal } from '../../../assets/messages/en/proposal.json' with { type: 'json' };
export { default as quantities } from '../../../assets/messages/en/quantities.json' with { type: 'json' };
export { default as roster } from '../../../assets/messages/en/roster.json' with { type: 'json' };
export { default as setOut } from '../../../assets/messages/en/set-out.json' with { type: 'json' };
export { default as sheet } from '../../../assets/messages/en/sheet.json' with { type: 'json' };
export { default as show } from '../../../assets/messages/en/show.json' with { type: 'json' };
export { default as stroke } from '../../../assets/messages/en/stroke.json' with { type: 'json' };
export { default as tapes } from '../../../assets/messages/en/tapes.json' with { type: 'json' };
export { default as transfer } from '../../../assets/messages/en/transfer.json' with { type: 'json' };
export { default as trial } from '../../../assets/messages/en/trial.json' with { type: 'json' };
export { default as underWay } from '../../../assets/messages/en/under-way.json' with { type: 'json' };
export { default as values } from '../../../assets/messages/en/values.json' with { type: 'json' };
export { default as workshopCut } from '../../../assets/messages/en/workshop-cut.json' with { type: 'json' };
export { default as workshopSheet } from '../../../assets/messages/en/workshop-sheet.json' with {
  type: 'json',
};
