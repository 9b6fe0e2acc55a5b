/** Stands with every other emergency: people before animals. */
export const PEOPLE_FIRST = 'People first: anyone shocked, burnt, numb, short of breath or unwell.';

/** Said wherever somebody asks for a medicine. */
export const NO_MEDICINE =
  'I never give a dose of a medicine. Ask a vet who knows fish, and follow the label of the product.';
