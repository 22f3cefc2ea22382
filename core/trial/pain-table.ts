/** One language's words about pain; written folded: lower case, without accents, ł as l. */
export interface PainWords {
  /** Beginnings of words for pain, numbness, tingling, swelling, cramp; a bar at the end asks for the whole word. */
  readonly pain: readonly string[];
  /** Words that begin like one of those and mean the opposite. */
  readonly free: readonly string[];
  /** Words that take back what follows. */
  readonly not: readonly string[];
  /** Words that take back what stands before them. */
  readonly notAfter: readonly string[];
  /** Words that make a negation none: "not only". */
  readonly only: readonly string[];
  /** Words that join what is taken back: "no pain or numbness". */
  readonly and: readonly string[];
  /** Words that may mean pain or only discomfort: whoever wrote them is asked. */
  readonly perhaps: readonly string[];
}

/**
 * The words in the program's languages, as athletes say them. Collected from everyday use, no source. Those under `perhaps`
 * are the ones to be looked over by a native speaker first.
 */
export const PAIN_WORDS: Readonly<Record<'en' | 'de' | 'hu' | 'es' | 'pl', PainWords>> = {
  en: {
    pain: [
      'pain',
      'hurt',
      'ache',
      'aching',
      'sore',
      'numb',
      'tingl',
      'asleep',
      'swell',
      'swollen',
      'burn',
      'cramp',
      'stab',
      'sharp',
      'needles',
      'unfeeling',
    ],
    free: ['painless', 'painfree', 'sharpen'],
    not: [
      'no',
      'not',
      'never',
      'without',
      'nothing',
      'isnt',
      'wasnt',
      'didnt',
      'doesnt',
      'dont',
      'hasnt',
      'neither',
      'nor',
    ],
    notAfter: ['free', 'gone'],
    only: ['only', 'stop', 'just'],
    and: ['or', 'and', 'nor'],
    perhaps: ['uncomfortabl', 'stiff', 'tight', 'pinch', 'dead|'],
  },
  de: {
    pain: [
      'schmerz',
      'weh|',
      'wehtu',
      'wehtat',
      'taub',
      'kribbel',
      'eingeschlafen',
      'einschlaf',
      'geschwollen',
      'schwell',
      'krampf',
      'brenn',
      'sticht',
      'stechen',
      'gefuhllos',
    ],
    free: ['schmerzfrei', 'schmerzlos'],
    not: ['kein', 'keine', 'keinen', 'keinerlei', 'weder', 'nicht', 'ohne', 'nie', 'niemals', 'nichts'],
    notAfter: ['weg'],
    only: ['nur', 'blos'],
    and: ['und', 'oder', 'noch'],
    perhaps: ['unangenehm', 'steif', 'zwickt', 'druckt|', 'verspannt'],
  },
  hu: {
    pain: [
      'faj|',
      'fajt|',
      'fajdal',
      'fajni',
      'fajo',
      'zsibbad',
      'elzsibbad',
      'bizserg',
      'dagad',
      'duzzad',
      'gorcs',
      'begorcs',
      'szurja',
      'szurt',
      'szuro',
      'erzeketlen',
    ],
    free: ['fajdalommentes', 'fajdalomment'],
    not: ['nem', 'nincs', 'nincsen', 'sem', 'semmi', 'semmilyen', 'soha', 'sohasem'],
    notAfter: ['nelkul', 'nincs', 'elmult'],
    only: ['csak'],
    and: ['es', 'vagy', 'se', 'sem'],
    perhaps: ['kenyelmetlen', 'merev', 'nyomja', 'feszul'],
  },
  es: {
    pain: [
      'dolor',
      'duele',
      'duelen',
      'dolia',
      'dolio',
      'doler',
      'entumec',
      'adormec',
      'hormigue',
      'hincha',
      'inflam',
      'calambre',
      'ardor',
      'quemaz',
      'pinchaz',
      'punzad',
    ],
    free: [],
    not: ['no', 'sin', 'nunca', 'jamas', 'ningun', 'ninguna', 'tampoco', 'nada'],
    notAfter: [],
    only: ['solo', 'solamente'],
    and: ['y', 'o', 'ni', 'e', 'u'],
    perhaps: ['molest', 'incomod', 'rigid', 'tirant'],
  },
  pl: {
    pain: [
      'bol|',
      'boli|',
      'bola|',
      'bolu|',
      'bole|',
      'bolal',
      'bolesn',
      'bolec|',
      'zabol',
      'dretw',
      'zdretw',
      'scierp',
      'mrowi',
      'mrowk',
      'spuch',
      'opuch',
      'skurcz',
      'piecze',
      'klucie',
      'kluje',
    ],
    free: ['bezbolesn'],
    not: ['nie', 'bez', 'brak', 'zaden', 'zadnego', 'zadnych', 'nigdy', 'ani'],
    notAfter: ['minal'],
    only: ['tylko'],
    and: ['i', 'ani', 'lub', 'albo', 'oraz'],
    perhaps: ['niewygodn', 'sztywn', 'uciska'],
  },
};

/** Simplified Chinese has no spaces between words: what hurts, what takes it back right before it, and what may be either. */
export const CHINESE_PAIN = {
  pain: ['疼', '痛', '麻', '刺', '肿', '抽筋', '痉挛', '失去知觉', '没有知觉', '没知觉'],
  not: ['不再', '不', '没有', '没', '无', '毫无', '并未', '从未'],
  perhaps: ['不舒服', '酸', '僵', '压着', '紧'],
  /** Words with one of those characters that speak of something else. */
  free: ['麻烦', '刺激', '痛快'],
} as const;
