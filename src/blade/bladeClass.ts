/** The classes of band that the cutting data know: high-speed-steel edge on a spring-steel back, or carbide-tipped teeth. */
export const bladeClasses = ["bi-metal", "carbide"] as const;
export type BladeClass = (typeof bladeClasses)[number];
