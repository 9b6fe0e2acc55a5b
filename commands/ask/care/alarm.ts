import type { UrgentId } from '../../../core/care/urgent/cards.ts';
import { readLogged } from '../../../core/log/value.ts';
import type { LoggableId } from '../../../core/water/loggable.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { says } from '../intent.ts';
import { levelIn } from './cycle-log.ts';

/** Readings that cannot wait: °C, practical salinity, mg/L in all. Common practice, no source. */
const TOO_HOT_C = 29;
const TOO_COLD_C = 20;
const TOO_FRESH = 28;
const AMMONIA_MG_L = 0.5;
/** A pasted line of more readings than this is judged as a line. */
const FEW = 2;

const DISTRESS = ['help', 'what (?:do|should|can) (?:i|we) do', 'what now', 'emergency', 'urgent', 'now', 'asap', 'quick(?:ly)?', 'dying', 'rising', 'dropp(?:ed|ing)', 'gasp\\w*', 'woke up', 'came home', 'just (?:saw|found|noticed)', 'panic\\w*'] as const; // prettier-ignore
const ELSEWHERE = ['mix(?:ed|ing)?', 'bin', 'bucket', 'batch', 'hypo\\w*', 'brackish', 'cycl\\w*', 'fishless', 'room', 'lamp', 'sensor'] as const; // prettier-ignore

/** An emergency by its number, where the words sound alarmed and the number is of the tank. */
export function alarmIn(heard: Heard): UrgentId | undefined {
  if (heard.mentions.length === 0 || heard.said.length > FEW) return undefined;
  if (heard.said.some(({ role }) => role === 'goal' || role === 'fresh' || role === 'step')) return undefined;
  if (!says(heard, ...DISTRESS) || says(heard, ...ELSEWHERE)) return undefined;
  const value = (id: LoggableId): number | undefined => {
    const text = readingSaid(heard, id);
    return text === undefined ? undefined : readLogged(id, text, id).value;
  };
  const tempC = value('temperature');
  if (tempC !== undefined && tempC >= TOO_HOT_C) return 'overheating';
  if (tempC !== undefined && tempC <= TOO_COLD_C) return 'cold water';
  if ((levelIn('ammonia', heard.text) ?? 0) >= AMMONIA_MG_L) return 'ammonia';
  return (value('salinity') ?? TOO_FRESH + 1) <= TOO_FRESH ? 'salinity crash' : undefined;
}

/** The one number said of it as it is now; undefined for none, or where more than one was said. */
function readingSaid(heard: Heard, id: LoggableId): string | undefined {
  const said = heard.said.filter(({ parameter, role }) => parameter === id && role !== 'goal');
  return said.length === 1 ? said[0]?.mention.text : undefined;
}

/** The same where it is certain that it is a reading: "crashed to 1.016", "overdosed to 14". */
export function levelNow(heard: Heard, id: LoggableId): string | undefined {
  const said = heard.said.filter(({ parameter, role }) => parameter === id && role !== 'before');
  return readingSaid(heard, id) ?? (said.length === 1 ? said[0]?.mention.text : undefined);
}

export type Overdosed = 'alkalinity' | 'limewater' | 'calcium';

export function overdosed(heard: Heard): Overdosed {
  if (says(heard, 'kalk\\w*', 'lime ?water', 'lime')) return 'limewater';
  const isCalcium = says(heard, 'calcium', 'ca') && !says(heard, 'alk\\w*', 'd?kh');
  return isCalcium ? 'calcium' : 'alkalinity';
}

/** What ammonia or the overdosed one reads. */
export function levelSaid(heard: Heard, what: UrgentId, of: Overdosed | undefined): string | undefined {
  if (what === 'overdose') return levelNow(heard, of === 'calcium' ? 'calcium' : 'alkalinity');
  const mgL = what === 'ammonia' ? levelIn('ammonia', heard.text) : undefined;
  return mgL === undefined ? undefined : `${mgL} mg/L`;
}
