/** Reasons and remedies of what goes wrong with a cut: a script of its own, loaded when it is asked for. */
export { coachView } from "./views/coachView";
