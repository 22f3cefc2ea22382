/** Entries: what they are called for a screen reader, and why something could not be taken. */
export const FIELDS = {
  'field.less': 'Less: {label}',
  'field.more': 'More: {label}',
  'field.empty': 'A number is needed here.',
  'field.not-a-number': '“{text}” does not read as a number. Write 17.5, 17,5, 175 mm or 6 7/8 in.',
  'field.unknown-unit': '“{text}” is not a unit known here. Write mm, cm, m, in or ft; kg or lb for a mass.',
  'field.unclear-separator': 'In “{text}” it is not clear which mark is the decimal one.',
  'field.too-small': '{value} is below {limit}, the least that can be entered here.',
  'field.too-large': '{value} is above {limit}, the most that can be entered here.',
  'field.kept': '{why} {value} is kept.',
  'field.needed': 'This is needed.',
  'field.date-ahead': 'This day has not come yet.',
  'field.date-wrong': 'Write the date as year-month-day.',
  'form.wrong.one': 'One thing is still missing or wrong:',
  'form.wrong.other': '{count} things are still missing or wrong:',
} as const;
