/** Names of medicines for fish, corals and people, as patterns; none of them may stand beside an amount anywhere. */
const DRUG =
  /\b(?:copper|formalin|formaldehyde|prazi(?:quantel)?|metronidazole|chloroquine|quinine|antibiotics?|dewormers?|erythromycin|\w+(?:mycin|cycline|cillin|floxacin|quantel|mectin|dazole|misole|benzuron)|nitrofur\w*|malachite|methylene|acriflavine|levamisole|iodine|peroxide|h2o2|permanganate|clove oil|eugenol|paracetamol|ibuprofen|aspirin|antihistamines?|adrenaline|epinephrine|chlorhexidine|medicines?|medications?)\b/i;
const AMOUNT =
  /\d(?:[\d.,]*\d)?\s*(?:mg|µg|mcg|kg|g|grams?|ml|cc|l|drops?|tsp|tbsp|teaspoons?|tablespoons?|spoons?|cups?|capfuls?|tablets?|pills?|capsules?|ppm|ppb|oz|ounces?)(?![a-z0-9])/gi;

/** Sentences that hold a medicine together with an amount; amounts that `said` holds already are not counted. */
export function medicineDoses(text: string, said = ''): readonly string[] {
  const known = said.toLowerCase().replace(/\s+/g, '');
  return text.split(/[.!?\n]\s/).filter((sentence) => {
    const amounts = sentence.match(AMOUNT) ?? [];
    return (
      DRUG.test(sentence) &&
      amounts.some((amount) => !known.includes(amount.toLowerCase().replace(/\s+/g, '')))
    );
  });
}

/** The same in every text of a value, each for itself. */
export function dosesWithin(value: unknown, said = ''): readonly string[] {
  if (typeof value === 'string') return medicineDoses(value, said);
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap((part) => dosesWithin(part, said));
}
