/** What the short form holds at most; it fits one screen of a phone. Own choices. */
export const shortLimits = {
  /** Characters of a line. */
  headline: 140,
  step: 110,
  danger: 110,
  read: 90,
  /** Characters of all but the line that tells what is left, as long as what must stand there allows it. */
  whole: 450,
  wholeUrgent: 690,
  /** Lines. */
  facts: 3,
  steps: 3,
  urgentSteps: 5,
  dangers: 2,
  /** Lines or rows of a list at a time. */
  page: 8,
  /** Characters of a page of a list. */
  wholePage: 460,
  tableColumns: 30,
  next: 4,
  /** Choices of what was just asked. */
  choices: 10,
} as const;
