import { cuttingConstants as k } from "../data/cuttingConstants";

/**
 * Feed force at which a tensioned band buckles sideways, F = 4·Mcr / (S·(1 − e/(2S))),
 * Mcr = √((π²·E·Iy/S² + T)·(G·J + T·r²)), Iy = w·t³/12, r² = (w² + t²)/12, T = tension·w·t; the load is spread over e.
 * @param input width w, thickness t, span S, extent e of the contact [mm]; tension [N/mm²]; torsion J [mm⁴], w·t³/3·(1 − 0.63·t/w) when left out; G = E/2.6, Poisson 0.3
 * @returns F [N]
 * @source lateral buckling of a narrow beam with axial tension, after Timoshenko & Gere (from memory, the sign of the axial load turned); spread load: beam statics
 */
export function bandForce({
  width,
  thickness,
  span,
  extent,
  tension,
  torsion,
}: {
  readonly width: number;
  readonly thickness: number;
  readonly span: number;
  readonly extent: number;
  readonly tension: number;
  readonly torsion?: number | undefined;
}): number {
  const pull = tension * width * thickness;
  const bending = (k.modulus.value * width * thickness * thickness ** 2) / k.rectangleInertia.value;
  const j =
    torsion ??
    ((width * thickness * thickness ** 2) / k.rectangleTorsion.value) * (1 - (k.torsionEnds.value * thickness) / width);
  const radius = (width ** 2 + thickness ** 2) / k.rectangleInertia.value;
  const moment = Math.sqrt(
    ((Math.PI ** 2 * bending) / span ** 2 + pull) *
      ((k.modulus.value / (2 * (1 + k.poisson.value))) * j + pull * radius),
  );
  return (k.bandEdges.value * moment) / (span * (1 - extent / (2 * span)));
}
