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
