// Every message in Simplified Chinese, one file a subject.
export { default as archive } from '../../../assets/messages/zh/archive.json' with { type: 'json' };
export { default as athleteFindings } from '../../../assets/messages/zh/athlete-findings.json' with {
  type: 'json',
};
export { default as athletePage } from '../../../assets/messages/zh/athlete-page.json' with { type: 'json' };
export { default as athletesTable } from '../../../assets/messages/zh/athletes-table.json' with {
  type: 'json',
};
export { default as bench } from '../../../assets/messages/zh/bench.json' with { type: 'json' };
export { default as board } from '../../../assets/messages/zh/board.json' with { type: 'json' };
export { default as boat } from '../../../assets/messages/zh/boat.json' with { type: 'json' };
export { default as boatKept } from '../../../assets/messages/zh/boat-kept.json' with { type: 'json' };
export { default as clubLibrary } from '../../../assets/messages/zh/club-library.json' with { type: 'json' };
export { default as conflictFields } from '../../../assets/messages/zh/conflict-fields.json' with {
  type: 'json',
};
export { default as crew } from '../../../assets/messages/zh/crew.json' with { type: 'json' };
export { default as drawing } from '../../../assets/messages/zh/drawing.json' with { type: 'json' };
export { default as fields } from '../../../assets/messages/zh/fields.json' with { type: 'json' };
export { default as find } from '../../../assets/messages/zh/find.json' with { type: 'json' };
export { default as findings } from '../../../assets/messages/zh/findings.json' with { type: 'json' };
export { default as fullSize } from '../../../assets/messages/zh/full-size.json' with { type: 'json' };
export { default as glossary } from '../../../assets/messages/zh/glossary.json' with { type: 'json' };
export { default as growth } from '../../../assets/messages/zh/growth.json' with { type: 'json' };
export { default as hull } from '../../../assets/messages/zh/hull.json' with { type: 'json' };
export { default as judgement } from '../../../assets/messages/zh/judgement.json' with { type: 'json' };
export { default as measuring } from '../../../assets/messages/zh/measuring.json' with { type: 'json' };
export { default as paddle } from '../../../assets/messages/zh/paddle.json' with { type: 'json' };
export { default as photograph } from '../../../assets/messages/zh/photograph.json' with { type: 'json' };
export { default as program } from '../../../assets/messages/zh/program.json' with { type: 'json' };
export { default as proposal } from '../../../assets/messages/zh/proposal.json' with { type: 'json' };
export { default as quantities } from '../../../assets/messages/zh/quantities.json' with { type: 'json' };
export { default as roster } from '../../../assets/messages/zh/roster.json' with { type: 'json' };
export { default as setOut } from '../../../assets/messages/zh/set-out.json' with { type: 'json' };
export { default as sheet } from '../../../assets/messages/zh/sheet.json' with { type: 'json' };
export { default as show } from '../../../assets/messages/zh/show.json' with { type: 'json' };
export { default as stroke } from '../../../assets/messages/zh/stroke.json' with { type: 'json' };
export { default as tapes } from '../../../assets/messages/zh/tapes.json' with { type: 'json' };
export { default as transfer } from '../../../assets/messages/zh/transfer.json' with { type: 'json' };
export { default as trial } from '../../../assets/messages/zh/trial.json' with { type: 'json' };
export { default as underWay } from '../../../assets/messages/zh/under-way.json' with { type: 'json' };
export { default as values } from '../../../assets/messages/zh/values.json' with { type: 'json' };
export { default as workshopCut } from '../../../assets/messages/zh/workshop-cut.json' with { type: 'json' };
export { default as workshopSheet } from '../../../assets/messages/zh/workshop-sheet.json' with {
  type: 'json',
};
