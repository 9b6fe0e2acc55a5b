import { answer } from '../answer.ts';

/** A question that was understood, and on which nothing here was checked: said, not guessed. */
export const noPage = answer({
  headline: 'I have nothing checked on exactly that, and I do not guess: please ask the keepers here.',
});
