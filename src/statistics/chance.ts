/** Random numbers that are the same on every run: the linear congruential generator of the C standard's example (from memory). */
export class Chance {
  constructor(private state: number) {}

  /** From 0 to below 1. */
  next(): number {
    this.state = (this.state * 1_103_515_245 + 12_345) % 2 ** 31;
    return this.state / 2 ** 31;
  }
}
