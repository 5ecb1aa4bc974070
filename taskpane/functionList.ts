import { catalogue } from "../functions/catalogue";
import { signature } from "../functions/describe";
import { element } from "./element";

/** The functions of the add-in: what each answers, its arguments, an example to type. */
export const functionList = (): HTMLElement =>
  element(
    "section",
    { "aria-labelledby": "functions" },
    element("h2", { id: "functions" }, "Functions"),
    element("ul", { class: "list" }, ...catalogue.map((e) => element("li", {}, element("h3", {}, e.name), element("p", {}, e.help), element("code", {}, signature(e)), element("p", { class: "quiet" }, "For example ", element("code", {}, `=${e.examples[0]}`))))),
  );
