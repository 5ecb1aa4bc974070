import { FakeBook, installFake } from "./fakeExcel";
import { hostileTexts } from "./injection";

/** Stands in for office.js in a page. */
const book = new FakeBook();
Object.assign(globalThis, { fakeBook: book, hostileTexts, CustomFunctions: { associate: () => undefined } });
installFake(book);
