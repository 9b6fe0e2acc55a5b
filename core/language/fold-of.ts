/** Which of `folds` groups a batch is left out with: by its name, so that a batch more moves no other. */
export function foldOf(batch: string, folds: number): number {
  const sum = [...batch].reduce((all, letter) => all + (letter.codePointAt(0) ?? 0), 0);
  return sum % folds;
}
