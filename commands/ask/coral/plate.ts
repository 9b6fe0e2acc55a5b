import { coralsIn } from '../../../core/words/corals.ts';
import { isLoose, looseAnswer } from '../../coral/loose-answer.ts';
import { says, type Intent } from '../intent.ts';

/** A free-living coral put on rock or glued: down to open sand. */
export const plateIntent: Intent = (heard) => {
  if (
    !says(
      heard,
      'glu(?:e|ed|ing)',
      'epoxy',
      'putty',
      'ledge',
      'wedged?',
      '(?:on|onto|to) (?:a |the |my |some )?(?:live )?rocks?(?:work)?',
    )
  )
    return undefined;
  const named = coralsIn(heard.text).find(({ entries }) => isLoose(entries[0]));
  return named === undefined ? undefined : looseAnswer(named);
};
