import type { UrgentId } from '../../../core/care/urgent/cards.ts';
import { readLogged } from '../../../core/log/value.ts';
import { sideBeyond } from '../../../core/care/urgent/side.ts';
import { Problem } from '../../../core/problem.ts';
import { levelCard } from '../../../core/care/urgent/level-card.ts';
import { limitsOf, sideOf, urgentSide, type Range } from '../../../core/water/limits.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';
import { dosedOf, type overdosable } from '../../urgent/input.ts';
import { saidOf, type Heard } from '../../../core/words/hear.ts';
import { says } from '../intent.ts';
import { levelIn } from './cycle-log.ts';
import { degreesSaid } from './degrees-said.ts';

/** Where the words sound alarmed, temperature is one from a day's pace outside its usual range; own choice. */
const { usual: USUAL_C, pace: PACE_C } = limitsOf('temperature');
const STRAINED_C: Range = [USUAL_C[0] - (PACE_C?.down ?? 0), USUAL_C[1] + (PACE_C?.up ?? 0)];
/** What an emergency can be read off, in the order to act in. */
const ALARMING = ['ammonia', 'alkalinity', 'ph', 'salinity'] as const;
/** A pasted line of more readings than this is judged as a line. */
const FEW = 2;

/** "dropped to 17 C": where it is now, not where it should go. */
const MOVED = String.raw`(?:dropp?ed|fell|crashed|plummeted|went|got|shot up|jumped|climbed|rose|spiked|(?:is )?(?:down|up)) (?:way |up |down )?to|hits?|reached`;
const DISTRESS = [
  'help',
  'what (?:do|should|can) (?:i|we) do',
  'what now',
  'emergency',
  'urgent',
  'now',
  'asap',
  'quick(?:ly)?',
  'dying',
  'rising',
  'dropp(?:ed|ing)',
  'gasp\\w*',
  'overnight',
  'this morning',
  'while (?:i|we) (?:was|were)',
  'suddenly',
  'climbing',
  'falling',
  'woke up',
  'came home',
  MOVED,
  'just (?:saw|found|noticed)',
  'panic\\w*',
  'stress(?:ed|ing)',
  'jam(?:med|s)',
  'stuck',
  'fail(?:ed|ing)',
  'broke',
  'broken',
  'malfunction\\w*',
  'left (?:it|the \\w+) (?:on|running)',
  'forgot\\w*',
  'by (?:accident|mistake)',
] as const;
const OF_TANK = [
  'tank',
  'water',
  'reef',
  'aquarium',
  'temp(?:erature)?',
  'heater',
  'sump',
  'display',
] as const;
const ASKING = [
  '^(?:is|are) (?:\\w+ ){0,3}(?:\\d+|too)',
  'too (?:hot|cold|warm) for',
  'can (?:i|corals?|fish|they|you|a)',
  'how',
  'ok(?:ay)?',
  'should',
  'bottles?',
  'treat\\w*',
  'survive',
] as const;
const ELSEWHERE = [
  'mix(?:ed|ing)?',
  'bin',
  'bucket',
  'batch',
  'hypo\\w*',
  'brackish',
  'cycl\\w*',
  'fishless',
  'room',
  'lamp',
  'sensor',
  'quarantine',
  'qt',
  'hospital',
  'hatch\\w*',
] as const;

/** An emergency by its number, where the words sound alarmed and the number is of the tank. */
export function alarmIn(heard: Heard): UrgentId | undefined {
  if (heard.said.length > FEW) return undefined;
  const isMove = heard.said.length === 1 && says(heard, MOVED);
  const isPlan = heard.said.some(
    ({ role }) => (role === 'goal' && !isMove) || role === 'fresh' || role === 'step',
  );
  if (isPlan || says(heard, ...ELSEWHERE)) return undefined;
  const value = (id: ParameterId): number | undefined => {
    const text = isMove || id === 'temperature' ? levelNow(heard, id) : readingSaid(heard, id);
    return text === undefined ? undefined : valueOf(id, text);
  };
  const tempC = value('temperature');
  const calm = tempC === undefined ? undefined : urgentSide('temperature', tempC);
  if (calm !== undefined && says(heard, ...OF_TANK) && !says(heard, ...ASKING))
    return levelCard('temperature', calm);
  if (!says(heard, ...DISTRESS)) return undefined;
  const strained = tempC === undefined ? undefined : sideOf(tempC, STRAINED_C);
  if (strained !== undefined) return levelCard('temperature', strained);
  const levels: Readonly<Partial<Record<ParameterId, number | undefined>>> = {
    ammonia: levelIn('ammonia', heard.text),
    alkalinity: value('alkalinity'),
    ph: value('ph'),
    salinity: value('salinity'),
  };
  return ALARMING.map((id) => cardOf(id, levels[id])).find((card) => card !== undefined);
}

function cardOf(id: ParameterId, level: number | undefined): UrgentId | undefined {
  const side = level === undefined ? undefined : urgentSide(id, level);
  return side === undefined ? undefined : levelCard(id, side);
}

/** A reading as a number; one beyond every scale counts as more, or less, than any limit; other unclear ones are none. */
function valueOf(id: ParameterId, text: string): number | undefined {
  try {
    return readLogged(id, text, id).value;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const side = sideBeyond(id, text);
    return side === undefined ? undefined : side === 'high' ? Infinity : -Infinity;
  }
}

/** The one number said of it as it is now; undefined for none, or where more than one was said. */
function readingSaid(heard: Heard, id: ParameterId): string | undefined {
  const said = saidOf(heard, id).filter(({ role }) => role !== 'goal');
  return said.length === 1 ? said[0]?.mention.text : undefined;
}

/** The same where it is certain that it is a reading: "crashed to 1.016", "overdosed to 14". */
export function levelNow(heard: Heard, id: ParameterId): string | undefined {
  const said = saidOf(heard, id).filter(({ role }) => role !== 'before');
  const text = readingSaid(heard, id) ?? (said.length === 1 ? said[0]?.mention.text : undefined);
  if (text !== undefined) return text;
  if (id === 'temperature') return degreesSaid(heard.text);
  return id === 'salinity' ? offScaleSaid(heard.text) : undefined;
}

/** "salinity crashed to 0.995": a gravity that no other number can be taken for. */
function offScaleSaid(text: string): string | undefined {
  const [, number] =
    /\b(?:salinity|sal|sg|gravity)\b[^\d.]{0,24}(\d+(?:[.,]\d+)?)(?![\d.]| ?%)/.exec(text) ?? [];
  return number !== undefined && sideBeyond('salinity', number) !== undefined ? number : undefined;
}

export type Overdosed = (typeof overdosable)[number];

export function overdosed(heard: Heard): Overdosed {
  if (says(heard, 'kalk\\w*', 'lime ?water', 'lime')) return 'limewater';
  if (says(heard, 'ph') && !says(heard, 'alk\\w*', 'd?kh', 'calcium')) return 'limewater';
  if (says(heard, 'alk\\w*', 'd?kh')) return 'alkalinity';
  if (says(heard, 'calcium', 'ca')) return 'calcium';
  return says(heard, 'magnesium', 'mag') ? 'magnesium' : 'alkalinity';
}

/** What ammonia or the overdosed one reads. */
export function levelSaid(heard: Heard, what: UrgentId, of: Overdosed | undefined): string | undefined {
  if (what === 'overdose') {
    return levelNow(heard, dosedOf(of));
  }
  const mgL = what === 'ammonia' ? levelIn('ammonia', heard.text) : undefined;
  return mgL === undefined ? undefined : `${mgL} mg/L`;
}
