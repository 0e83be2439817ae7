/** Data that cannot be taken as it stands. The desk turns it into an `invalid-input` failure at this path. */
export class RefusedInput extends Error {
  readonly path: readonly (string | number)[];

  constructor(message: string, path: readonly (string | number)[]) {
    super(message);
    this.name = 'RefusedInput';
    this.path = path;
  }
}
