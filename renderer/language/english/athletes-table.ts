/** Athletes as a table: handed out as CSV, and taken in again row by row. */
export const ATHLETES_TABLE = {
  'table.title': 'Athletes as a table',
  'table.out': 'Hand out',
  'table.out.about':
    'A CSV file for any table program: name, side, sex, birth date, stature, mass and tape measures. Limits, bands, consents and earlier measurings are not in it; the archive’s bundle has everything. It holds personal data: keep it as carefully as the program’s own folder.',
  'table.out.do': 'Hand out those in use',
  'table.out.all': 'Hand out those set aside too',
  'table.out.file': 'Athletes {day}',
  'table.out.saved': 'Saved as {path}.',
  'table.out.none': 'There is no athlete yet.',

  'table.in': 'Take in',
  'table.in.about':
    'A CSV file with a heading above each column; only the name is needed for somebody already known, and for somebody new name, side, stature and mass. Numbers may have units of their own. Nothing changes before you say so.',
  'table.in.do': 'Choose a CSV file',
  'table.in.columns': 'Headings that are understood',
  'table.in.read.one': '{count} row read.',
  'table.in.read.other': '{count} rows read.',
  'table.in.empty': 'There is no row below the headings in {file}. Nothing was changed.',
  'table.in.no-names':
    'There is no column “Name” in {file}, so nothing of it could be read. Nothing was changed. Its headings are: {headings}.',
  'table.in.no-headings': 'none',
  'table.in.not-text':
    '{file} is not a text file that can be read. Nothing was changed. Save the table as CSV, UTF-8.',
  'table.in.too-large':
    '{file} is larger than 4 MB. Nothing was changed. Take the table apart into smaller ones.',
  'table.in.left-out': 'Columns left out, as their headings are not understood: {headings}.',
  'table.heading.unknown': '“{text}”',
  'table.heading.unknown-unit': '“{text}” (unit not known; allowed are mm, cm, m, in, ft, kg and lb)',
  'table.heading.twice': '“{text}” (there twice)',

  'table.bad.title.one': '{count} cell cannot be taken as it stands',
  'table.bad.title.other': '{count} cells cannot be taken as they stand',
  'table.bad.about':
    'Put each right here, or leave its row out. The other rows can be taken in without them.',
  'table.bad.row': 'Row',
  'table.bad.column': 'Column',
  'table.bad.wrong': 'What is wrong, and what is allowed',
  'table.bad.cell': 'Cell',
  'table.bad.entry': 'Row {row}, {column}',
  'table.bad.no-column': '{column} (no such column)',
  'table.bad.needed': 'Empty; needed for somebody new.',
  'table.bad.needed.choice': 'Empty; needed for somebody new: {allowed}.',
  'table.bad.outside': '{value} is not between {min} and {max}.',
  'table.bad.choice': '“{text}” is not known here; allowed is {allowed}.',
  'table.bad.date': '“{text}” is not a date; write year-month-day, 2012-11-05.',
  'table.bad.date-unclear':
    'In “{text}” it is not clear which is the month; write year-month-day, 2012-11-05.',
  'table.bad.date-ahead': '“{text}” has not come yet; allowed is today or a day before.',
  'table.bad.too-long': 'Longer than {most} characters.',
  'table.bad.unknown-identifier':
    'No athlete here has this identifier; leave the cell empty for somebody new.',
  'table.bad.several-of-this-name':
    'Several athletes here have this name; give the identifier, as the handed-out table has it.',
  'table.bad.same-as-row': 'The same athlete stands in row {row} already; allowed is one row each.',

  'table.rows': 'What would be done',
  'table.rows.name': 'Athlete',
  'table.rows.what': 'What',
  'table.row.new': 'new',
  'table.row.same': 'the same as here',
  'table.row.changed': 'changes: {columns}',
  'table.row.unusual':
    'unusual: {what} {value}, where 98 of 100 of that stature and mass measure {low} to {high}',
  'table.row.bad': 'left out until its cells are right',
  'table.no-name': '(no name)',

  'table.take.one': 'Take in {count} athlete',
  'table.take.other': 'Take in {count} athletes',
  'table.take.nothing':
    'There is nothing to take in: every row is the same as here, or has a cell to put right.',
  'table.taken.one': '{count} athlete was taken in. A backup of before lies in the archive.',
  'table.taken.other': '{count} athletes were taken in. A backup of before lies in the archive.',
  'table.rest': 'Hand out the rows left out',
  'table.rest.about': 'As a CSV file with what is wrong beside each, to be put right elsewhere.',
  'table.rest.file': 'Rows left out',
  'table.rest.column': 'What is wrong',
  'table.forget': 'Put the file away',
} as const;
