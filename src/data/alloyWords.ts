/** Words of alloy families that a number follows: the number belongs to them, whether the table has that alloy or not. From memory. */
export const alloyWords: ReadonlySet<string> = new Set(
  "inconel incoloy monel k-monel hastelloy nimonic waspaloy stellite nitronic invar kovar haynes udimet rene duplex superduplex alloy".split(
    " ",
  ),
);
