/** Setting out: the boatbuilder's page. What stands on the sheet itself is made by core's `setout`. */
export const SET_OUT = {
  'setout.title': 'Set out: {name}',
  'setout.way': 'Set out',
  'setout.way.of': 'Set out: {name}',
  'setout.back': 'Back to the bench',
  'setout.nobody':
    'Nobody kneels in this boat yet, so there is nothing to build. Put an athlete in a seat at the bench.',
  'setout.broken': 'This boat cannot be drawn: {why} Mend its measurements on the boat’s page.',

  'setout.which': 'Which setting',
  'setout.which.seat': 'Seat',
  'setout.which.seat.of': '{number}: {name}',
  'setout.which.state': 'Setting',
  'setout.which.present': 'As it stands now',
  'setout.which.revision': 'Revision {number}: {name}',
  'setout.which.draft':
    'This setting is a draft: save a revision at the bench before anything is cut, so that sheet and boat can be told apart later.',

  'setout.paper': 'Paper',
  'setout.paper.size': 'Size',
  'setout.paper.units': 'Lengths',

  'setout.making': 'Knee, foam and bolts',
  'setout.making.knee': 'Knee across its knuckles',
  'setout.making.knee.hint': 'Bent, by callipers. Empty: estimated from the body.',
  'setout.making.foam': 'Foam in the recess',
  'setout.making.bolt': 'Bolts',

  'setout.sheet': 'Set-out sheet',
  'setout.sheet.screen':
    'The same sheet as the PDF. On the screen the drawing is not to scale; on {paper} at 100 % it is {scale}.',
  'setout.sheet.drawing': 'Plan, profile and section of the seat, {scale} on {paper}',
  'setout.sheet.pdf': 'Sheet as PDF',
  'setout.sheet.print': 'Print this page',

  'setout.templates': 'Full-size templates',
  'setout.templates.about':
    'At full size with two check bars of 100 mm on every page. Print at 100 %, never fitted to the page, and lay a ruler on both bars.',
  'setout.templates.pages.one': '{count} page',
  'setout.templates.pages.other': '{count} pages',
  'setout.templates.size': '{wide} × {tall}, {pages} of {paper}',
  'setout.templates.picture': 'Outline of the template {title}',
  'setout.templates.pdf': 'Templates as PDF',
  'setout.templates.svg': 'As SVG, in millimetres',
  'setout.templates.dxf': 'As DXF, for saw and drill by computer',
  'setout.templates.none': 'Tick at least one template.',

  'paper.saved': 'Written to {path}.',
  'paper.fetched': 'The file has been handed to your browser.',
  'paper.not-saved': 'Nothing was written.',
  'paper.boxes': 'The program has no letters for {scripts}; boxes stand in their place.',
} as const;
