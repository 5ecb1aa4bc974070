import { officeLink } from "./office";
import { bridge, type Sheet } from "./sheet";
import type { Link } from "./store";

const sheetOf = (owner: Window): Sheet | undefined =>
  (owner as unknown as Readonly<Record<string, Sheet | undefined>>)[bridge];

/** The page that holds this one, when it is our own; Excel on the web holds the pane too, but is another origin. */
function ownParent(): Window | undefined {
  if (window.parent === window) return undefined;
  try {
    return window.parent.location.origin === window.location.origin ? window.parent : undefined;
  } catch {
    return undefined;
  }
}

/** Looks for the sheet: the try-it page's, else Excel's. The pane works without waiting for the answer. */
export function findSheet(tell: (link: Link) => void): void {
  const owner = ownParent();
  if (owner === undefined) {
    officeLink(tell);
    return;
  }
  const take = (): void => {
    const sheet = sheetOf(owner);
    tell(
      sheet === undefined
        ? { is: "waiting", why: "The sheet is still loading; looking things up works already." }
        : { is: "ready", sheet },
    );
  };
  owner.addEventListener(bridge, take);
  take();
}
