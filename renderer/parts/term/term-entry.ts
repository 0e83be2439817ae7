/** A word of the trade, as the screens say it and as it is told. */
export interface TermEntry {
  /** All forms by which a sentence may say it, with a line between them, and after a single one; the first is its name. A capital stands for that capital alone. */
  readonly forms: string;
  /** What it means, in one line. */
  readonly meaning: string;
}
