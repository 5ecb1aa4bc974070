/** The kinds of argument: what a cell may hold there, and how it is read. */
export { blade, bladeClass, offer, pitch, pitchList, triedBlade } from "./blade";
export { matchedMaterial, material } from "./material";
export { number } from "./number";
export { description, orderItem } from "./order";
export { length, section } from "./size";
export { symptom } from "./symptom";
export { sawMinutes } from "./minutes";
export { tableRow } from "./table";
export { choice, label, mark, text } from "./text";
