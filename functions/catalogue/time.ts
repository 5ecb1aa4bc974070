import { timeWorking } from "../../src/time/timeWorking";
import { cutTime } from "../../src/time/cutTime";
import { throughput } from "../../src/time/throughput";
import { workload } from "../../src/time/workload";
import { number } from "../kinds";
import { column, each, entry, list, one, orElse } from "../bind/entry";
import { handlings, rates, sections } from "./parameters";

export const time = [
  entry({
    name: "CUTTIME",
    subject: "Time",
    help: "Minutes per cut at a known removal rate; with a shop block, its handling minutes and maximum feed too.",
    examples: ['SAW.CUTTIME("round 7", 2.14)', 'SAW.CUTTIME("flat 6x1", 9, 1.5)'],
    source: "minutes = area / rate: German vocational tables book, sawing page (read)",
    asks: ["how long", "how many minutes", "cutting time"],
    params: { section: sections(), rate: rates(), handling: handlings() },
    takes: { settings: "optional", saw: true, units: true },
    result: { form: "cell", as: "minutes", help: "minutes per cut" },
    working: timeWorking,
    run: cutTime,
  }),
  entry({
    name: "THROUGHPUT",
    subject: "Time",
    help: "Pieces that a saw gives in a number of hours, at minutes per cut with the handling; only finished cuts count.",
    examples: ["SAW.THROUGHPUT(20, 40, 0.6, 20)", "SAW.THROUGHPUT(3.5, 8)"],
    source: "pieces = floor(60 × hours × availability / minutes) × pieces per cut: definition",
    asks: ["how many pieces a shift", "pieces per day", "output of the saw"],
    params: {
      minutes: each(number("minutes"), "minutes per cut, handling included"),
      hours: each(number("hours"), "hours that the saw is manned"),
      availability: orElse(each(number("share"), "share of those hours that the saw can run"), 1),
      piecesPerCut: orElse(each(number("count", { whole: true }), "pieces in one stack"), 1),
    },
    takes: {},
    result: { form: "cell", as: "count", help: "whole pieces" },
    run: throughput,
  }),
  entry({
    name: "WORKLOAD",
    subject: "Time",
    help: "How full the saws are with a list of jobs, how long a job waits for a saw, and the hours that are missing.",
    examples: ["SAW.WORKLOAD(30, 80, 45)", 'SAW.WORKLOAD({20;35;90}, {60;40;10}, 32, 2, "all")'],
    source:
      "Kingman's formula, several saws by Sakasegawa 1977, first hours: reflected Brownian motion (all from memory), its correction fitted to simulations; share: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 26.1",
    asks: [
      "is the saw overloaded",
      "do we need another saw",
      "how long does a job wait",
      "saw capacity",
      "queue at the saw",
    ],
    params: {
      minutes: list(number("minutes"), "a list: minutes of one job, set-up and handling included"),
      quantities: list(number("count"), "a list beside it: how many such jobs come in the period"),
      hours: one(number("hours"), "hours that one saw runs in the same period"),
      saws: orElse(one(number("count", { whole: true }), "saws that take the jobs"), 1),
    },
    takes: { show: "optional" },
    result: {
      form: "row",
      main: "share",
      columns: {
        hoursNeeded: column("hours", "of sawing in the period"),
        share: column("ratio", "of the saws' time; above 1 they are overloaded"),
        expectedWait: column(
          "minutes",
          "mean wait for a saw in the long run, jobs coming at random; none above a share of 0.95, where it takes too long to come",
        ),
        waitFromEmpty: column(
          "minutes",
          "mean of the first hours, no job waiting at the start, from a share of 0.8 up; within 15 % for 1 to 4 saws, 20 % for 8",
        ),
        hoursShort: column("hours", "that the saws do not have; 0 while they have enough"),
      },
    },
    run: workload,
  }),
];
