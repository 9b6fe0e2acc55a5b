export interface Row {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  /** The most it should be; left out where there is no goal. */
  readonly goal?: number;
}

/** Prints rows in columns; a goal that is missed is named by a word. */
export function printRows(title: string, rows: readonly Row[]): void {
  console.log(`\n${title}`);
  for (const { what, value, unit, goal } of rows) {
    const verdict = goal === undefined ? '' : `goal ${goal} ${unit}  ${value <= goal ? 'met' : 'MISSED'}`;
    console.log(
      `  ${what.padEnd(58)}${value.toFixed(3).padStart(11)} ${unit.padEnd(3)} ${verdict}`.trimEnd(),
    );
  }
}
