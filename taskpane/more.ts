/** What the pane loads when it is first asked for, as one script: not every visit needs it. */
export { explain } from "./views/explain";
export { sectionView } from "./views/sectionView";
export { workingTable } from "./views/workingView";
export { workbookView } from "./views/workbookView";
