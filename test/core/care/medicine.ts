/** Names of medicines for fish and corals, as patterns; none of them may stand beside an amount anywhere. */
const DRUG =
  /\b(?:copper|formalin|praziquantel|metronidazole|chloroquine|antibiotics?|erythromycin|\w+(?:mycin|cycline|cillin|floxacin|quantel|mectin|dazole)|malachite|methylene|levamisole|iodine|peroxide|permanganate|paracetamol|ibuprofen|antihistamines?|adrenaline|epinephrine)\b/i;
const AMOUNT = /\d\s*(?:mg|µg|mcg|g|ml|mL|drops?|tsp|teaspoons?|tablets?|ppm|mg\/L|cc)\b/;

/** Sentences that hold a medicine together with an amount. */
export function medicineDoses(text: string): readonly string[] {
  return text.split(/[.!?\n]\s/).filter((sentence) => DRUG.test(sentence) && AMOUNT.test(sentence));
}
