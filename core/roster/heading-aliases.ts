import type { TapeMeasure } from '../document/athlete-schema.ts';

/**
 * What clubs call a column besides its own name: English, German, Hungarian, Spanish, Polish, simplified Chinese. Everyday
 * headings of such lists, no source. Letter case, accents, spaces and marks do not matter.
 */
export const HEADING_ALIASES: Readonly<
  Record<'id' | 'name' | 'side' | 'sex' | 'bornOn' | 'measuredOn' | 'stature' | 'mass', readonly string[]>
> = {
  id: ['ID'],
  name: [
    ...['Athlete', 'Paddler', 'Full name', 'Sportler', 'Sportlerin', 'Athlet', 'Athletin', 'Név', 'Sportoló'],
    ...['Versenyző', 'Nombre', 'Nombre y apellidos', 'Deportista', 'Atleta', 'Imię i nazwisko', 'Nazwisko'],
    ...['Zawodnik', 'Zawodniczka', '姓名', '名字', '运动员'],
  ],
  side: [
    ...['Paddles on', 'Paddles on the', 'Paddle side', 'Seite', 'Paddelseite', 'Oldal', 'Lapátoldal', 'Lado'],
    ...['Strona', 'Strona wiosłowania', '侧', '划桨侧', '左右'],
  ],
  sex: ['Gender', 'Geschlecht', 'Nem', 'Sexo', 'Género', 'Płeć', '性别'],
  bornOn: [
    ...['Born', 'Birth date', 'Date of birth', 'DOB', 'Birthday', 'Geboren', 'Geboren am', 'Geburtsdatum'],
    ...[
      'Született',
      'Születési dátum',
      'Születési idő',
      'Fecha de nacimiento',
      'Nacimiento',
      'Nacido',
      'Nacida',
    ],
    ...['Data urodzenia', 'Urodzony', 'Urodzona', 'Ur.', '出生日期', '生日'],
  ],
  measuredOn: [
    ...['Measured', 'Date measured', 'Measurement date', 'Gemessen', 'Gemessen am', 'Messdatum', 'Mérve'],
    ...['Mérés dátuma', 'Medido', 'Fecha de medición', 'Zmierzono', 'Data pomiaru', '测量日期'],
  ],
  stature: [
    ...['Height', 'Body height', 'Größe', 'Groesse', 'Körpergröße', 'Magasság', 'Testmagasság', 'Estatura'],
    ...['Altura', 'Talla', 'Wzrost', '身高'],
  ],
  mass: [
    ...['Weight', 'Body weight', 'Body mass', 'Gewicht', 'Körpergewicht', 'Masse', 'Körpermasse', 'Súly'],
    ...['Testsúly', 'Tömeg', 'Testtömeg', 'Peso', 'Masa', 'Masa corporal', 'Waga', 'Masa ciała', '体重'],
  ],
};

/** The same for the tape measures that clubs keep most often. */
export const TAPE_ALIASES: Readonly<Partial<Record<TapeMeasure, readonly string[]>>> = {
  armSpan: [
    'Span',
    'Wingspan',
    'Spannweite',
    'Armspannweite',
    'Karfesztáv',
    'Envergadura',
    'Rozpiętość ramion',
    '臂展',
  ],
  footLength: ['Foot', 'Fußlänge', 'Lábfejhossz', 'Longitud del pie', 'Długość stopy', '脚长'],
  sittingHeight: ['Sitzhöhe', 'Ülőmagasság', 'Altura sentado', 'Talla sentado', 'Wysokość siedząca', '坐高'],
  shoulderHeight: [
    'Shoulder height',
    'Schulterhöhe',
    'Vállmagasság',
    'Altura del hombro',
    'Wysokość barków',
    '肩高',
  ],
  kneelingHeight: ['Kniend Höhe', 'Térdelőmagasság', 'Altura de rodillas', 'Wysokość w klęku', '跪姿高'],
  kneeHeightSitting: [
    'Knee height',
    'Kniehöhe',
    'Térdmagasság',
    'Altura de rodilla',
    'Wysokość kolana',
    '膝高',
  ],
};
