/** Work done in units that take about as long everywhere: a plan stops by them and not by the clock, so that it is the same on any machine. */
export class Work {
  private done = 0;
  constructor(private readonly most: number) {}

  add(units: number): void {
    this.done += units;
  }

  get used(): number {
    return this.done;
  }

  get isOver(): boolean {
    return this.done > this.most;
  }
}

/** Random numbers that are the same every time: a linear congruential generator. */
export class Chance {
  constructor(private seed: number) {}

  /** From 0 to below 1. */
  next(): number {
    this.seed = (this.seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return this.seed / 2_147_483_648;
  }
}
