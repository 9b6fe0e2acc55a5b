import { subjectCards } from '../../core/care/subjects/cards.ts';
import type { CardText } from '../../core/language/fit-cards.ts';

/** The words of the cards on particular questions, which their readers learn from beside the sentences. */
export const cardTexts: readonly CardText[] = [...subjectCards].flatMap(([kind, cards]) =>
  cards.map(({ card, title, headline, steps, points, cautions }) => ({
    kind,
    card,
    texts: [card, title, headline, ...points.map((point) => point.join(' ')), ...steps, ...cautions],
  })),
);
