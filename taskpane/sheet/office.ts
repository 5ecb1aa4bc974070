import { copyValues } from "./officeCopy";
import { append } from "./officeLog";
import { block, go, onSelect, read, selected, sheets } from "./officeRead";
import { reenter, writer } from "./officeWrite";
import type { Sheet } from "./sheet";
import type { Link } from "./store";

/** The pane's side of Excel; the files named office are the only ones that say Office or Excel. It reads what it is asked for and writes when told to; nothing else. */

/** The sheet of the Excel that holds this pane. */
export const excelSheet = (): Sheet => ({
  selected,
  onSelect,
  read,
  ...writer(),
  sheets,
  block,
  go,
  copyValues,
  reenter,
  append,
});

/** Says how things stand with Excel, now and when that changes. */
export function officeLink(tell: (link: Link) => void): void {
  if (typeof Office === "undefined") {
    const wanted = document.querySelector('script[src$="/office.js"]') !== null;
    tell({
      is: "none",
      why: wanted
        ? "Excel's own script (office.js) did not load, so nothing can be inserted; looking things up works. Open the pane again when the network allows it."
        : "There is no sheet beside this page, so nothing can be inserted; looking things up works.",
    });
    return;
  }
  tell({ is: "waiting", why: "Waiting for Excel; looking things up works already." });
  void Office.onReady(({ host }) => {
    tell(
      host === Office.HostType.Excel
        ? { is: "ready", sheet: excelSheet() }
        : {
            is: "none",
            why: "This page is open outside Excel, so nothing can be inserted; looking things up works. In Excel, open it with the Kerfsheet button.",
          },
    );
  });
}
