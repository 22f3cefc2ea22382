/** What would tighten a value, and what one centimetre does to every value. */
export const VALUES = {
  'tighten.ask': 'What would tighten it most?',
  'tighten.ask.of': 'What would tighten it most? {name}',
  'tighten.working': 'Working it out …',
  'tighten.tape': 'Measure {name}: {measure}',
  'tighten.photo': 'Read off a photograph: {measure}',
  'tighten.photo.thighPitch': 'kneeling thigh, side view',
  'tighten.photo.thighRoll': 'kneeling thigh, from behind',
  'tighten.photo.pelvisYaw': 'turn of the pelvis, from above',
  'tighten.photo.trunkPitch': 'trunk forward, side view',
  'tighten.photo.trunkRoll': 'trunk lean, from behind',
  'tighten.photo.topHand': 'top hand over the shoulders in mid-drive, side view',
  'tighten.from-to': '± {from} to ± {to}',
  'tighten.none':
    'No tape measure and no photograph would tighten it by much: the rest is placing, the hull and what the model itself does not know.',
  'tighten.about': 'Expected, at 95 %, if the reading comes out as the model has it.',

  'centimetre.ask': 'What one centimetre does, to every value',
  'centimetre.title': 'What one centimetre does',
  'centimetre.title.inch': 'What half an inch does',
  'centimetre.about':
    'How much each value changes for one centimetre more of a place, five degrees more of a turn. Small changes add; large ones need the drawing.',
  'centimetre.about.inch':
    'How much each value changes for half an inch more of a place, five degrees more of a turn. Small changes add; large ones need the drawing.',
  'centimetre.waiting': 'Working it out …',
  'centimetre.value': 'Value',
  'centimetre.by-place': '+1 cm',
  'centimetre.by-place.inch': '+½ in',
  'centimetre.by-turn': '+5°',
  'centimetre.close': 'Close',
  'centimetre.nothing': '0',
} as const;
