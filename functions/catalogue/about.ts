import { version } from "../../src/about/version";
import { entry } from "../bind/entry";

export const about = [
  entry({
    name: "VERSION",
    subject: "Whole add-in",
    help: "Version of the add-in and of its data, to quote when something looks wrong.",
    examples: ["SAW.VERSION()"],
    source: "package version; digest of the data tables",
    asks: ["which version"],
    params: {},
    takes: {},
    result: { form: "cell", as: "text", help: "version and data digest" },
    run: version,
  }),
];
