/** The frame around every page, the first start, and what is said when the program cannot be reached. */
export const SHEET = {
  'sheet.name': 'Kneelwright',
  'sheet.window': '{page} · Kneelwright',
  'sheet.pages': 'Pages',
  'sheet.fits': 'Fits',
  'sheet.athletes': 'Athletes',
  'sheet.boats': 'Boats',
  'sheet.help': 'Help',
  'sheet.skip': 'Go to the content',
  'sheet.loading': 'Fetching …',

  'display.open': 'Paper and units',
  'display.theme': 'Paper',
  'display.theme.system': 'As the computer',
  'display.theme.light': 'Light',
  'display.theme.dark': 'Night',
  'display.length': 'Lengths',
  'display.mass': 'Masses',
  'display.decimal': 'Decimal mark',
  'display.decimal.system': 'As the computer',
  'display.decimal.point': '17.5',
  'display.decimal.comma': '17,5',
  'display.entry': 'Entry always understands 17.5, 17,5, 175 mm and 6 7/8 in.',

  'start.what':
    'A paddler in a sprint canoe kneels on one knee. Here you plan where the knee pad, the rear rest, the front foot and the paddle go, and see what that does to the joints, the load and the trim of the boat.',
  'start.demo': 'Open the demo club',
  'start.demo.about': 'An invented club with athletes, boats and a fit to try your hand on.',
  'start.blank': 'Start blank',
  'start.blank.about': 'Put in your first athlete and boat; four minutes with a tape.',
  'start.cautions': 'Before you begin',
  'start.caution.pain':
    'Numbness, tingling or pain: stop and change the fit. ErrorMessage that lasts belongs to a physiotherapist or doctor.',
  'start.caution.strap': 'A foot strap must let go by itself. Check it on land, then in shallow water.',
  'start.caution.water':
    'First trials near the shore, somebody watching, buoyancy aid as local rules ask, cold water respected.',
  'start.caution.minors': 'Minors: a guardian’s consent for photographs and body data.',
  'start.caution.rules':
    'Class rules and the boat maker’s limits come before anything shown here. Figures are estimates, each with its uncertainty.',

  'trouble.title': 'This did not work',
  'trouble.gone':
    'The program has stopped or cannot be reached. What was shown as kept is kept. Start it again, then reload this page.',
  'trouble.retry': 'Try again',
  'trouble.fault':
    'The page made a mistake of its own. What was shown as kept is kept. Load the page again to go on where you were.',
  'trouble.reload': 'Load the page again',
  'trouble.set-aside.one':
    '{count} entry in the store could not be read and was set aside. Nothing of it was deleted.',
  'trouble.set-aside.other':
    '{count} entries in the store could not be read and were set aside. Nothing of them was deleted.',
} as const;
