/**
 * Random numbers that are the same on every run: the linear congruential generator state ← 1664525·state + 1013904223 modulo
 * 2³², whose period is 2³² (Numerical Recipes in C, 2nd ed., 7.1, from memory).
 */
export class Chance {
  constructor(private state: number) {}

  /** From 0 to below 1. */
  next(): number {
    this.state = (Math.imul(this.state, 1664525) + 1013904223) >>> 0;
    return this.state / 2 ** 32;
  }
}
