/**
 * Endings of generic names of medicines: many substances, one rule. WHO, The use of stems in the selection of International
 * Nonproprietary Names (INN), 2018, from memory; "sulfa" but no sulfate.
 */
const STEM =
  /^(?:[a-z]{2,}(?:m[yi]cin|cycline|cillin|oxacin|quantel|ectin|azole|quine|misole|benzuron|zuril|(?:ph|f)enicol|furantoin|furazone|sulfone)|[a-z]{4,}prim|sul(?:f|ph)a(?!t)[a-z]*|nitrofur[a-z]*|furan[a-z]*|nystatin|(?:ceph|cef)[a-z]+(?:in|ime|one|or))$/;

/** Whether a word is made like the generic name of a medicine. Checks: "doxycycline", "fluconazole"; not "sulfate". */
export function isMedicineName(word: string): boolean {
  return word.length > 5 && STEM.test(word);
}
