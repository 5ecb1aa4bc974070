/** What the pane loads when it is first asked for, as one script: not every visit needs it. */
export { explain } from "./explain";
export { sectionView } from "./sectionView";
export { workbookView } from "./workbookView";
