import { definitionOf, type QuantityKind } from '../../quantity/unit.ts';

/** What a number's unit lets it be. Most are kinds of quantity; the others only tell what part the number plays. */
export type UnitKind =
  | QuantityKind
  | 'gravity'
  | 'molar'
  | 'watts'
  | 'wattHours'
  | 'ampHours'
  | 'kelvin'
  | 'money'
  | 'heads'
  | 'times'
  | 'scoops'
  | 'flow'
  | 'others';

/** A unit as it may be written: what it lets its number be, and how it is written for `readQuantity`. */
export interface UnitWord {
  readonly kinds: readonly UnitKind[];
  readonly symbol: string;
}

const KINDS: readonly QuantityKind[] = [
  'volume',
  'mass',
  'alkalinity',
  'concentration',
  'nitrate',
  'phosphate',
  'ammonia',
  'nitrite',
  'salinity',
  'temperature',
  'conductivity',
  'days',
  'length',
  'light',
  'illuminance',
  'share',
];

/** Spellings that are ordinary words, or another unit, behind a number in a sentence. */
const NOT_IN_PROSE = new Set(['us', 'w', 'dh', 'us g', 'tan', 'pss', 's/m', "'", '"']);

/** What people write or a machine hears, for a unit there is. */
const ALSO: Readonly<Record<string, string>> = {
  mil: 'ml',
  mils: 'ml',
  mls: 'ml',
  mills: 'ml',
  cc: 'ml',
  litters: 'l',
  litter: 'l',
  liters: 'l',
  litro: 'l',
  litros: 'l',
  litri: 'l',
  litr: 'l',
  litrs: 'l',
  lites: 'l',
  lts: 'l',
  lit: 'l',
  gals: 'gal',
  gall: 'gal',
  galls: 'gal',
  gallo: 'gal',
  'us gals': 'us gal',
  'us galls': 'us gal',
  galon: 'gal',
  galons: 'gal',
  gallong: 'gal',
  gl: 'gal',
  'g tank': 'gal',
  'us-gal': 'us gal',
  usg: 'us gal',
  'british gallons': 'imp gal',
  'british gallon': 'imp gal',
  'uk g': 'imp gal',
  perc: '%',
  percents: '%',
  'per cents': '%',
  '% ': '%',
  '%s': '%',
  "%'s": '%',
  '%er': '%',
  '%ers': '%',
  percenter: '%',
  percenters: '%',
  degrees: 'degrees',
  ...Object.fromEntries(
    ['degrees', 'degree'].flatMap((degree) =>
      [
        'of hardness',
        'hardness',
        'of carbonate hardness',
        'carbonate hardness',
        'dkh',
        'dh',
        'of kh',
        'german',
      ].map((of) => [`${degree} ${of}`, 'dkh']),
    ),
  ),
  'german degrees': 'dkh',
  'german degree': 'dkh',
  inchs: 'in',
  inchies: 'in',
  inche: 'in',
  wks: 'weeks',
  wk: 'weeks',
  mins: 'minutes',
  teaspoonful: 'tsp',
  teaspoonfuls: 'tsp',
  'tea spoon': 'tsp',
  'tea spoons': 'tsp',
  'table spoon': 'tbsp',
  'table spoons': 'tbsp',
  tablespoonfuls: 'tbsp',
  mgs: 'mg',
  gms: 'g',
  gm: 'g',
  kgs: 'kg',
  ppms: 'ppm',
  pppm: 'ppm',
  'parts per million': 'ppm',
  'parts per thousand': 'ppt',
  'milligrams per litre': 'mg/l',
  'milligrams per liter': 'mg/l',
  'mg l': 'mg/l',
  ...Object.fromEntries(
    ['µg', 'ug', 'mcg', 'microgram', 'micrograms', 'micrograms per litre', 'micrograms per liter'].map(
      (name) => [name, 'ug/l'],
    ),
  ),
  ...Object.fromEntries(
    ['g', 'grams', 'gram', 'gr'].flatMap((gram) => [
      ...['per', 'by', 'a', 'on the', 'to the', 'in a', 'to a', 'for a', 'each', 'every'].flatMap((per) =>
        ['l', 'liter', 'litre'].map((litre) => [`${gram} ${per} ${litre}`, 'g/l']),
      ),
      ...['liter', 'litre'].map((litre) => [`${gram} ${litre}`, 'g/l']),
    ]),
  ),
  'umol/m2s': 'par',
  "c's": '°c',
  'dkh.': 'dkh',
  dk: 'dkh',
  dkhs: 'dkh',
  fahrenheit: '°f',
  farenheit: '°f',
  celcius: '°c',
};

/** Units that are no quantity a command reads, but tell what a number counts. */
const OTHERS: Readonly<Record<Exclude<UnitKind, QuantityKind>, string>> = {
  gravity: 'sg',
  molar: 'molar mol/l',
  watts: 'w watt watts wt',
  wattHours: 'wh watthours watt-hours watt-hour',
  ampHours: 'ah amphours amp-hours amp-hour',
  kelvin: 'kelvin k°',
  money: 'bucks dollars dollar euro euros pounds quid $ € £ usd eur',
  heads: 'heads head polyps polyp frags frag corals coral fish fishes snails crabs hermits',
  times: 'times x',
  scoops:
    'scoop scoops capful capfuls caps drops drop pinch pinches spoon spoons spoonful spoonfuls cubes cube pumps squirts handful',
  flow: 'gph lph l/h',
  others: 'v volt volts ma amp amps m² m2 miles km mph bpm ohm',
};

const table: ReadonlyMap<string, UnitWord> = buildTable();

function buildTable(): ReadonlyMap<string, UnitWord> {
  const map = new Map<string, { kinds: UnitKind[]; symbol: string }>();
  const put = (name: string, kind: UnitKind, symbol: string): void => {
    const known = map.get(name);
    if (known === undefined) map.set(name, { kinds: [kind], symbol });
    else if (!known.kinds.includes(kind)) known.kinds.push(kind);
  };
  for (const kind of KINDS) {
    for (const { symbol, names } of definitionOf(kind).units) {
      for (const name of new Set([symbol.toLowerCase(), ...names])) {
        if (name !== '' && !NOT_IN_PROSE.has(name)) put(name, kind, name);
      }
    }
  }
  for (const [name, of] of Object.entries(ALSO)) {
    const known = map.get(of);
    if (known !== undefined) map.set(name, known);
  }
  put('degrees', 'temperature', '');
  put('degree', 'temperature', '');
  put('grad', 'temperature', '');
  put('deg', 'temperature', '');
  put('°', 'temperature', '');
  put('"', 'length', 'in');
  for (const [kind, names] of Object.entries(OTHERS))
    for (const name of names.split(' ')) put(name, kind as UnitKind, name);
  return map;
}

const NAMES = [...table.keys()]
  .sort((a, b) => b.length - a.length)
  .map((name) => name.replace(/[.*+?^${}()|[\]\\/"'$]/g, '\\$&').replace(/ /g, String.raw`\s+`));
/** "a cup coral" is no cup. */
const UNIT = new RegExp(
  String.raw`[ -]{0,2}(?<unit>${NAMES.join('|')})(?![a-z0-9µ]|\/(?!\s*(?:d|day|night|w|wk|week|mo|month|min|minute|h|hr|hour)\b))(?<!cups?(?=\s+corals?\b))`,
  'y',
);

/** "8.4 in 75 gal", "1.025 in ppt", "18 in a bin", "9 in may": the word, unless what follows tells of a length. */
const OF_LENGTH = String.raw`in|inch\w*|x|by|deep|long|wide|tall|high|thick|cube|across|diameter|square|of|from|sand|rock|above|below|under|over|away|apart|and|or|to|at|each|front|back|up|down|off|between|on|with|but|so|is|tank|glass|gap|bed|cm|mm|ft|feet|foot`;
const IN_BEFORE = new RegExp(
  String.raw`^\s+(?:\d[\d.,]*(?!\s*(?:in\b|inch|"|x\b|by\b|[\d.,]))|(?!(?:${OF_LENGTH})\b)[a-z])`,
);
/** "ca 420 mg 1350": magnesium, and no milligrams. */
const MAGNESIUM_BEFORE = /^\s*[:=]?\s*1?[.,]?\d{3}(?![\d.,])/;

/** "120 x 50 x 50 cm": the next side, and no number of times. */
const SIDE_BEFORE = /^\s*\d/;

/** Units that may be a word of the sentence, and what then follows them. */
const WORD_BEFORE: Readonly<Record<string, RegExp>> = { in: IN_BEFORE, mg: MAGNESIUM_BEFORE, x: SIDE_BEFORE };

/** How full a spoon or a cup is: "one flat teaspoon", "a whole cup". */
const FULL = /[ -]{1,2}(?:flat|level|levelled|leveled|rounded|whole|full|big|small|good)(?=[ -])/y;
/** More than level: "two heaped teaspoons". */
const HEAPED = /[ -]{1,2}(?:heaped|heaping|heapped|piled)(?=[ -])/y;
/** Which litres of a system are counted: "780 wet litres", "60 actual gallons". */
const NET = /[ -](?:net|wet|actual|real|true|total|system|odd|something)(?=[ -])/y;
const OF_WATER = /^(?:gal|lit|imp|us gal|l$)/;
const OF_SPOONS = /^(?:tsp|tbsp|tea|table|(?:us )?cup|spoon|scoop|cap)/;

/** A unit where it stands in a text. */
interface UnitFound extends UnitWord {
  readonly end: number;
  readonly isHeaped?: true;
}

/** The unit right behind a place in a folded text, and where it ends. */
export function unitAt(text: string, at: number): UnitFound | undefined {
  const heaped = behind(text, at, HEAPED, OF_SPOONS);
  if (heaped !== undefined) return { ...heaped, isHeaped: true };
  return unitHere(text, at) ?? behind(text, at, FULL, OF_SPOONS) ?? behind(text, at, NET, OF_WATER);
}

/** A unit one word further on, where that word may stand before such a unit. */
function behind(text: string, at: number, word: RegExp, units: RegExp): UnitFound | undefined {
  word.lastIndex = at;
  if (!word.test(text)) return undefined;
  const from = word.lastIndex;
  const unit = unitHere(text, from);
  return unit !== undefined && units.test(text.slice(from, unit.end).trim()) ? unit : undefined;
}

function unitHere(text: string, at: number): UnitFound | undefined {
  UNIT.lastIndex = at;
  const name = UNIT.exec(text)?.groups?.['unit'];
  if (name === undefined || WORD_BEFORE[name]?.test(text.slice(UNIT.lastIndex)) === true) return undefined;
  const word = table.get(name.replace(/\s+/g, ' '));
  return word === undefined ? undefined : { ...word, end: UNIT.lastIndex };
}
