/** Weibull lives of a shape, mean 1, seeded. */
export function weibulls(seed: number, shape: number): () => number {
  let state = seed >>> 0;
  // Γ(1 + 1/shape) by its integral, so that the mean is 1.
  let gamma = 0;
  for (let x = 0.0005; x < 60; x += 0.001) gamma += x ** (1 / shape) * Math.exp(-x) * 0.001;
  return () => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    return (-Math.log((state + 0.5) / 2 ** 32)) ** (1 / shape) / gamma;
  };
}
