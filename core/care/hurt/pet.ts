import { FIRST_AID, type HurtCard } from './card.ts';

/** A dog, cat or bird of the house. Common practice, from memory. */
export const pet: HurtCard = {
  label: 'A pet ate, drank or was hurt',
  first:
    'Call a vet or animal poison line now, with the label or a photo of what it was. Do not make it vomit.',
  steps: [
    'Take the rest away, with gloves; other pets and children out.',
    'Zoanthid, coral, rock or slime: say palytoxin. Weak, wobbly or drooling: drive there now, call on the way.',
    'Powder or liquid on fur or paws: no licking; rinse with lukewarm water, with gloves, eyes too.',
    'Much salt water drunk: fresh water to drink, and the vet. Vomiting or wobbly is urgent.',
    'A shock: breaker off before you touch it. Fumes: birds first, out into fresh air.',
  ],
  never: ['No milk, oil, salt or people’s medicine.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};
