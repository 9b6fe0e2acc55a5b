import type { Heard } from '../../core/words/hear.ts';
import { coralsIn } from '../../core/words/corals.ts';
import { is, type MentionKind } from '../../core/words/mention.ts';
import { compoundsFor } from '../../core/dosing/compound.ts';
import { isTankSize } from '../../core/words/tank-volume.ts';
import { parameter } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { personAction } from '../urgent/hurt.ts';

/** At most so many things that can be done are named. */
const MOST_OFFERED = 3;
const MOST_NUMBERS = 6;

/** What can be done with the numbers that were seen, where no question was found in them: at most five lines. */
export function lost(heard: Heard): Answer {
  const seen = heard.mentions.slice(0, MOST_NUMBERS).map(({ text }) => text);
  return answer({
    headline:
      seen.length === 0
        ? 'I did not find a question I can work out in that.'
        : `I saw ${seen.join(', ')}, but not what you want to know.`,
    steps: [...offersFor(heard), '/help shows the rest, and /primer has short cards.'],
    next: [personAction, action('Something is going wrong now', 'urgent', {})],
  });
}

function offersFor(heard: Heard): readonly string[] {
  const first = (...kinds: readonly MentionKind[]): string | undefined =>
    heard.mentions.find((one) => kinds.some((kind) => is(one, kind)))?.text;
  const [named] = heard.parameters;
  const name = named === undefined ? undefined : parameter(named).label;
  const isUndosed = named !== undefined && compoundsFor(named).length === 0;
  const reading = heard.said[0]?.mention.text;
  const volume = heard.mentions.find(isTankSize)?.text;
  const [coral] = coralsIn(heard.text);
  const offers = [
    named !== undefined &&
      isUndosed &&
      `${name}: say what it reads, "${name} ${reading ?? '...'}", and I say how that stands and what to do.`,
    name !== undefined &&
      !isUndosed &&
      `${name}: say what it reads, where it should be and how much water: "${name} ${reading ?? '...'}, want ..., ${volume ?? '75 gal'}".`,
    first('salinity') !== undefined &&
      `${first('salinity')}: say where you want it: "salinity ${first('salinity')}, want 35 ppt, ${volume ?? '55 gal'}".`,
    first('light') !== undefined && `${first('light')}: name the coral, or the hours a day.`,
    coral !== undefined &&
      `${coral.name}: ask "how much light for ${coral.name}" or "can ${coral.name} stand next to a torch".`,
    first('share') !== undefined &&
      `${first('share')} as a water change: "nitrate 40, ${volume ?? '55 gal'}, ${first('share')} a week, how many to 10".`,
    volume !== undefined &&
      name === undefined &&
      `${volume}: name what is measured and where it should be: "alk 7.2 to 8.4 in ${volume} with soda ash".`,
    'A dose: "raise alk 7.2 to 8.4 in 75 gal with soda ash".',
    'A water change: "nitrate 80, 55 gal, 20 % a week, how many to 10".',
    'Salinity: "1.030, 55 gal, want 1.026".',
  ];
  return offers.filter((offer) => offer !== false).slice(0, MOST_OFFERED);
}
