/** The classes of band that the cutting data know: high-speed-steel edge on a spring-steel back, or carbide-tipped teeth. */
export type BladeClass = "bi-metal" | "carbide";
