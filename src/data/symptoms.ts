import { once } from "../once";
/**
 * The trouble table of CUTCHECK: symptoms, their likely causes, what raises or lowers each, and the check that tells it from
 * the others. Common practice, no source, weights judgement, but for what docs/sources.md lists under "What goes wrong".
 */

/** State in which a check is made; nothing is measured in a running saw except by eye and ear. */
export const checkStates = {
  s: "stopped and locked out",
  r: "running, guards shut",
  p: "on the cut piece or the chips",
  l: "from the records",
} as const;

/** Checks, "key|state|text". A part in brackets is said only where every number in it is known. */
// prettier-ignore
const checkRows = [
  "dull|s|Gloves on, lamp along the blade: bright flats on the tips, or shine on one side only, mean worn teeth. Compare with an unused end of the same blade.",
  "push|r|Take a quarter off the feed for one cut and lay the same square on it: an error that shrinks by as much or more was pushed there.",
  "guides|s|Measure from the work to the guide on each side and add the two[: now {guideGap}].",
  "guidesBad|s|Hold a square from the table to the side of the blade beside the work, then try a slip of paper between guide and blade: leaning, or paper that falls through, is the fault.",
  "slack|s|Read the tension gauge or the saw's own mark, with the band standing.",
  "lie|s|Square from the fixed jaw to the blade, straight edge along the bar over the rollers.",
  "packed|s|Look into the gullets just after the work: filled to the top with hard-pressed chips is the fault.",
  "hardSkin|p|Draw a file over the skin and over the cut face: where it slides without biting, the metal is hard.",
  "fewTeeth|s|Hold the blade against the thinnest part: fewer than two full teeth across it is the fault.",
  "feedHigh|r|Take a quarter off the feed for one cut. If the trouble shrinks clearly, it was the feed.",
  "notRunIn|l|Ask: did its first cuts run at about half the feed and the usual band speed?",
  "moved|s|Push each bar by hand with the blade clear: any that turns or slides is loose. On the cut face look for a step.",
  "entry|r|Watch the first seconds: does the blade jump, or does it drop on to a whole flat at once?",
  "oldKerf|l|Ask: was the blade changed in the middle of a cut? An old slot is narrower than the set of new teeth.",
  "carbideHit|s|Look at the tips under a lens: chipped corners, body of the tooth whole.",
  "tooFast|l|Read the band speed[: now {speed}][; this cut wants {wanted}]. Measure it once with a hand tachometer.",
  "feedLow|p|Look at the chips: dust or thin flakes instead of curls[, and a cut that lasts longer than {minutesHigh}].",
  "coolant|r|Watch where the stream lands: on both sides of the blade, going into the cut. Test the mix with a refractometer.",
  "harder|p|Draw a file over the cut face, or read the hardness on the certificate.",
  "tooFine|p|Count the teeth across the work[: now {teeth}]; the chips are dust although the feed is not small.",
  "endOfLife|l|Compare the area this blade has cut with what your blades usually reach.",
  "backwards|s|Look at the teeth: they must point the way the band runs. Read class and pitch on the blade.",
  "brush|s|Look at the brush: its tips must reach the bottom of the gullets and it must turn with the band.",
  "sticky|p|Look at the tooth faces: smeared metal that needs a pick to come off.",
  "normalHeat|r|Touch nothing; look: chips coloured but whole, no smoke from the cut, no smell of burnt coolant.",
  "normalChips|p|Crush a cold chip with pliers: crumbs with sharp edges are cut, grey flour is rubbed.",
  "hardened|p|Draw a file over the face just cut: it slides where the rest of the bar bites.",
  "tooCoarse|s|Count the teeth across the work[: now {teeth}]; six or more cut smoothly.",
  "resonance|r|Move the band speed by a tenth, up and then down, for half a minute each: a howl that goes away was that.",
  "wornSaw|s|Take hold of each guide arm and of the head and try to shake it.",
  "dryGuides|r|Let the band run free above the work: a noise that stays is guides, rollers, brush or wheel bearings.",
  "vibration|r|Watch a drop of coolant on the bar, hands off: does it dance? Change the band speed by a tenth: does the face change?",
  "edgeBuild|s|Look at the tooth tips: small welded lumps.",
  "weldedChips|s|Look for chips stuck in the gullets after the brush.",
  "fatigue|s|Look for several short cracks at the bottoms of the gullets, all over the band.",
  "backRoller|s|Turn each back roller with a stick; look for grooves and for a bright, rolled-over edge on the band's back.",
  "weldPoor|s|Look at the break: straight across at the weld. Sight along the back for a step, and feel with a gloved finger for a ridge.",
  "jam|p|Look at the cut: torn metal, a turned bar, a step. Look at the break: bent, torn, one place only.",
  "flange|s|Turn the wheels by hand and watch the gap between band back and flange.",
  "thick|s|Measure band thickness and wheel diameter[: here the band is bent to {bending} at every turn].",
  "pinch|s|Band slackened: does it lie free and straight through both guides and on to the wheels?",
  "toothLoad|r|Take a quarter off the feed; count the teeth in the thinnest part.",
  "motor|r|Read the ammeter against the plate on the motor; hear whether the motor itself slows.",
  "oily|s|Chalk a line across wheel and band, shut the guards, run one short cut, lock out and look: lines apart mean it slips.",
  "drive|s|Look for black dust under the belt cover and press the belt: clearly slack is the fault. Ask what stood at the stall: motor turning and wheel standing = belt or gearbox; wheel turning and band standing = band slips.",
  "pinched|s|Look whether the slot is narrower at its top than at the blade.",
  "tracking|s|Turn the wheels by hand three times and watch where the band settles.",
  "wheelDirt|s|Look at both rims: packed chips, a worn shoulder.",
  "lifted|l|Ask: did the band come off during the cut, or while it was going back?",
  "usual|l|Leave clamping and approach out of the minutes[; {minutesLow} to {minutesHigh} is usual here].",
  "setLow|r|Read the feed dial[ against {feedToSet}].",
  "wrongPitch|l|Compare the pitch on the blade with the one advised[, {best}].",
  "tooSlowBand|l|Read the band speed[: now {speed}][; this cut wants {wanted}].",
  "sawLimit|l|Read \"limit\" of CUTDATA for this saw: motor, feed force or maximum feed.",
  "feedValve|r|Time the head coming down above the work over a hand's width, twice: it must fall evenly and the same both times.",
  "breakOut|r|Watch the last tenth of the cut: does the head drop faster?",
  "ductile|p|Bend the burr with pliers: long and soft means the metal, short and ragged means the teeth.",
  "bundleHold|s|Push each bar with a rod: the middle ones are held only by their neighbours.",
  "once|p|Measure the spacing of the marks: once a turn of the band is feed × band length / band speed apart[, here {marks}].",
  "restart|l|One single step where the cut was stopped.",
  "jaws|s|Push the bar hard by hand with the blade clear; look for dirt, scale or a single bright line on the jaws.",
  "short|s|Measure how much of the bar lies between the jaws: less than half their length lets it tip.",
  "bent|s|Look along the bar over the rollers; press on the free end.",
  "setDry|l|Read Coolant in the shop block.",
  "noFlow|r|Follow the stream with your eye: it must land on the blade where it enters the work.",
  "tankLow|s|Look at the level against the mark, and at the strainer.",
  "cannotReach|r|Look at the band as it leaves the work: wet or dry?",
  "tooRich|l|Refractometer reading against the maker's sheet.",
  "splash|r|Close the tap by half for a minute: does the foam settle?",
  "dirtIn|s|Look: a rainbow film, a skin, another colour than the fresh mix.",
  "crack|s|Gloves on, turn the band by hand all the way round, lamp at gullets, back and weld.",
  "gap|s|Gloves on, turn the band by hand and look for a gap in the teeth.",
];

/** "symptom|also typed|stop line", then its causes, "key|cause|base|raised by|lowered by|check". */
// prettier-ignore
const symptomRows: readonly (readonly [string, ...string[]])[] = [
  ["cut not square|crooked cut, crooked, runs out, out of square, wanders, bellied cut, bowed cut, not straight, leads off, drifts|Stop when the blade leans visibly in the guides or the error grows from cut to cut: the next step is a broken blade.",
    "dull|dull or one-sided teeth|3|oldBlade 2, late 1, abrasive 1, hard 1|newBlade 3|dull",
    "push|more feed than the band can stand straight|2|pushOver 3, pushHard 2, feedHigh 2, feedHighish 1, bandNarrow 1|pushLight 2, feedLow 1|push",
    "guides|guides too far from the work|2|guidesFar 2, guidesVeryFar 1|guidesClose 2|guides",
    "guidesBad|guides loose, worn or out of line|2|wornSaw 1, newBlade 1|oldBlade 1|guidesBad",
    "slack|band too slack|1|tensionLow 3|tensionUsual 1|slack",
    "lie|work not square or not level in the jaws|1|bundle 1||lie",
    "packed|gullets too full: pitch too fine for this length of cut|0|gulletsFull 5, gulletsNearFull 1||packed",
    "hardSkin|hard skin, hard spot or weld seam|0|hardCase 3, rubsHardening 1||hardSkin",
  ],
  ["teeth broken off|teeth lost, teeth stripped or lost, stripped teeth, teeth stripped, missing teeth, lost teeth, tooth breakage, chipped teeth|Stop at once: the lost teeth lie in the slot and break the next ones. Lock out, pick them out with a magnet, not fingers.",
    "fewTeeth|too few teeth in the thinnest part|2|belowOneTooth 4, belowTwoTeeth 3, twoToThreeTeeth 1|manyInThin 2|fewTeeth",
    "feedHigh|feed too heavy|2|feedHigh 3, feedHighish 1, constantFeed 1|feedLow 2|feedHigh",
    "notRunIn|new blade not run in|2|newBlade 3|oldBlade 5|notRunIn",
    "packed|gullets too full: pitch too fine for this length of cut|1|gulletsFull 4, gulletsNearFull 1, tooFine 2|gulletsRoomy 1|packed",
    "moved|work or bundle moved under the blade|1|bundle 2||moved",
    "entry|hard meeting at the start: edge, flat side or scale|1|hardCase 2, varying 1, constantFeed 1||entry",
    "oldKerf|new blade set into an old cut|1|newBlade 1|oldBlade 1|oldKerf",
    "carbideHit|carbide teeth struck in an interrupted cut|0|carbideInterrupted 3||carbideHit",
    "hardSkin|hard skin, hard spot or weld seam|0|hardCase 2, rubsHardening 2||hardSkin",
  ],
  ["dull too soon|early wear, dull, worn too soon, short blade life, blade life short, teeth worn, blunt|Stop when it smokes, squeals and hardly cuts: the face hardens and takes the next blade with it.",
    "tooFast|band too fast for this metal|2|tooFast 3, fastish 1|tooSlowBand 2, slowish 1|tooFast",
    "feedLow|feed too light: the teeth rub|2|feedLow 3, feedLowish 1, rubsHardening 1, chipBelowEdge 1|feedHigh 2, feedHighish 1|feedLow",
    "notRunIn|new blade not run in|2|newBlade 2|oldBlade 5|notRunIn",
    "coolant|coolant missing or too lean where the teeth cut|1|cutDry 2, cutMist 1||coolant",
    "harder|metal harder, or its skin more abrasive, than the table takes it|1|hard 1, abrasive 2, hardCase 2, bimetalTooHard 2||harder",
    "tooFine|pitch too fine: too many teeth share the chip|0|tooFine 3||tooFine",
    "endOfLife|the blade has simply cut its share|0|oldBlade 4|newBlade 1|endOfLife",
    "backwards|blade on the wrong way round, or the wrong blade|0|newBlade 1, late 1||backwards",
  ],
  ["chips stuck in the teeth|chips welded, welded chips, chips welded in the gullets, packed gullets, gullets packed, loaded teeth, clogged teeth, swarf welded, swarf stuck|Stop before clearing anything. Lock out; brush or hook, gloves on, band standing.",
    "packed|gullets too full: pitch too fine for this length of cut|2|gulletsFull 4, gulletsNearFull 2, tooFine 1|gulletsRoomy 1|packed",
    "brush|chip brush worn or not turning|2|gulletsRoomy 1||brush",
    "coolant|coolant missing or too lean where the teeth cut|2|cutDry 2, cutMist 1, gummy 1||coolant",
    "tooFast|band too fast for this metal|1|tooFast 2, fastish 1|tooSlowBand 1|tooFast",
    "feedHigh|feed too heavy|1|feedHigh 2, feedHighish 1|feedLow 1|feedHigh",
    "sticky|soft, sticky metal|0|gummy 2||sticky",
  ],
  ["blue or smoking chips|blue chips, chips blue, smoking chips, smoke, burnt chips, burning, sparks, hot chips|Smoke, sparks or glowing chips: feed off and stop. Magnesium, titanium, zirconium and the like: never water on burning chips; class D extinguisher, get away from the chip tray, raise the alarm.",
    "tooFast|band too fast for this metal|3|tooFast 3, fastish 1|tooSlowBand 3, slowish 1|tooFast",
    "dull|dull or one-sided teeth|2|oldBlade 2, late 1|newBlade 3|dull",
    "coolant|coolant missing or too lean where the teeth cut|2|cutDry 2, cutMist 1||coolant",
    "feedLow|feed too light: the teeth rub|1|feedLow 2, feedLowish 1, chipBelowEdge 1|feedHigh 1|feedLow",
    "feedHigh|feed too heavy|1|feedHigh 2, gulletsFull 1|feedLow 1|feedHigh",
    "normalHeat|nothing wrong: a carbide blade sends its heat out in the chips|0|normalHeat 3, carbide 1|tooFast 3|normalHeat",
  ],
  ["powdery chips|fine chips, powdery chips or dust, dust, powder, flour, chips like dust, fine swarf|Dust of magnesium, titanium or zirconium is a fire waiting: stop, and clear it as the safety data sheet says. Dust of beryllium copper or leaded metal: stop, no compressed air.",
    "feedLow|feed too light: the teeth rub|3|feedLow 3, feedLowish 1, chipBelowEdge 2|feedHigh 3|feedLow",
    "tooFine|pitch too fine: too many teeth share the chip|2|tooFine 3|pitchRight 1, tooCoarse 2|tooFine",
    "dull|dull or one-sided teeth|2|oldBlade 2|newBlade 3|dull",
    "tooFast|band too fast for this metal|1|tooFast 2, fastish 1|tooSlowBand 1|tooFast",
    "normalChips|nothing wrong: this metal breaks into small chips|0|shortChips 5||normalChips",
    "hardened|the cut face has hardened under rubbing teeth|0|rubsHardening 3||hardened",
  ],
  ["noise or vibration|squeal, squeal or vibration, howl, chatter, judder, vibration, noise, rattle, shake|A knock once a turn of the band: stop at once (see knock once a turn). Work seen moving: stop at once.",
    "feedLow|feed too light: the teeth rub|2|feedLow 2, feedLowish 1, rubsHardening 1|feedHigh 2|feedLow",
    "moved|work or bundle moved under the blade|2|bundle 2, hollow 1||moved",
    "tooCoarse|too few teeth in contact|2|belowOneTooth 3, belowTwoTeeth 2, twoToThreeTeeth 1, tooCoarse 2|manyInThin 1|tooCoarse",
    "resonance|band speed happens to excite the blade|2|straightPitch 2, fastish 1, tooFast 1||resonance",
    "slack|band too slack|1|tensionLow 3|tensionUsual 1|slack",
    "guides|guides too far from the work|1|guidesFar 2|guidesClose 1|guides",
    "feedHigh|feed too heavy|1|feedHigh 2, pushOver 1|feedLow 1|feedHigh",
    "wornSaw|play in the saw: head pivot, arms, bearings, wheels|1|wornSaw 2||wornSaw",
    "dryGuides|noise from the machine, not from the cut|1|||dryGuides",
  ],
  ["rough face|rough cut, poor finish, rough surface, bad finish, coarse face|None of its own; stop when noise, smoke or moving work comes with it.",
    "dull|dull or one-sided teeth|2|oldBlade 2|newBlade 3|dull",
    "tooCoarse|pitch too coarse for this work|2|tooCoarse 3, fewInCut 1|tooFine 2|tooCoarse",
    "feedHigh|feed too heavy|2|feedHigh 3, feedHighish 1|feedLow 2|feedHigh",
    "vibration|vibration|1|straightPitch 1, bundle 1, wornSaw 1||vibration",
    "edgeBuild|metal building up on the teeth at a slow band|1|tooSlowBand 2, slowish 1, gummy 1|tooFast 1|edgeBuild",
    "weldedChips|chips carried round and pressed into the face|1|gulletsFull 2, gummy 1, cutDry 1|gulletsRoomy 1|weldedChips",
    "guidesBad|guides loose, worn or out of line|1|guidesFar 1, tensionLow 1, wornSaw 1||guidesBad",
  ],
  ["band broke|broken band, band breaks, blade broke, blade snapped, band snapped, blade breakage|Power off, stand clear until both wheels stand still; lock out before a guard is opened. A broken band springs: gloves, eye protection.",
    "fatigue|from a gullet: tired or overstrained band|2|oldBlade 2, tensionHigh 2, bandThick 2|newBlade 2|fatigue",
    "backRoller|from the back: pressed on its guide|2|pushOver 2, pushHard 1, wornSaw 1|pushLight 1|backRoller",
    "weldPoor|at the weld|1|newBlade 3|oldBlade 1|weldPoor",
    "jam|torn: the blade jammed|1|bundle 2, belowOneTooth 2, belowTwoTeeth 1, gulletsFull 1||jam",
  ],
  ["cracks in the back|back cracks, broke from the back, cracked back, back edge cracks|A cracked band is not run again.",
    "push|feed presses the back too hard on its guides|2|pushOver 3, pushHard 2, feedHigh 1|pushLight 2|push",
    "backRoller|back-up guide seized, grooved or set too far forward|2|wornSaw 2, pushLight 1||backRoller",
    "flange|back of the band runs on the wheel flange|1|wornSaw 1||flange",
    "slack|slack band bows back|0|tensionLow 3||slack",
  ],
  ["broke at the weld|weld broke, weld break, broke at the joint, joint broke, weld failed|Power off, stand clear until both wheels stand still; lock out before a guard is opened.",
    "weldPoor|poor weld: brittle, off line or not ground flush|3|newBlade 1|oldBlade 1|weldPoor",
    "tight|band too tight|1|tensionHigh 3|tensionUsual 1|slack",
    "thick|band too thick for the wheels|1|bandThick 3||thick",
    "jam|the blade jammed|1|bundle 2, belowOneTooth 1, belowTwoTeeth 1||jam",
    "pinch|guides pinch or bend the band|1|wornSaw 1||pinch",
  ],
  ["cracks from the gullets|gullet cracks, cracks at the gullets, broke from the gullet, body cracks|A cracked band is not run again.",
    "fatigue|the band is tired: bent round the wheels too often|2|oldBlade 2|newBlade 2|fatigue",
    "tight|band too tight|1|tensionHigh 4|tensionUsual 1, tensionLow 2|slack",
    "thick|band too thick for the wheels|1|bandThick 4||thick",
    "toothLoad|each tooth pulls too hard|1|feedHigh 2, feedHighish 1, belowOneTooth 2, belowTwoTeeth 1|feedLow 1|toothLoad",
    "pinch|guides pinch or bend the band|1|wornSaw 1||pinch",
  ],
  ["band stops or slips|band stalls, band stalls or slips, stalls, band slips, slips on the wheel, blade stops, stalls in the cut|Feed off and stop at once: a standing band under a turning wheel is sawn through. Lock out before freeing it.",
    "motor|motor at its limit|2|motorFull 3, motorBusy 1|motorEasy 2|motor",
    "feedHigh|feed too heavy or gullets packed|2|feedHigh 2, pushOver 1, gulletsFull 2|feedLow 1|feedHigh",
    "slack|band too slack|2|tensionLow 3|tensionUsual 1|slack",
    "oily|oil, coolant or worn tyres on the band wheels|1|flood 1, wornSaw 1||oily",
    "drive|drive belt or gearbox slips|1|wornSaw 1||drive",
    "pinched|the bar closes on the blade|1|wide 1||pinched",
  ],
  ["band runs off|blade comes off, band comes off, runs off the wheel, jumps off, will not track|Stop at once. Lock out before a guard is opened; a thrown band is under spring.",
    "tracking|wheels not in line (tracking)|3|wornSaw 1, newBlade 1||tracking",
    "slack|band too slack|2|tensionLow 3|tensionUsual 1|slack",
    "wheelDirt|chips or wear on the wheel rims|2|wornSaw 1, gulletsFull 1, gummy 1||wheelDirt",
    "push|feed pushes the band back|1|pushOver 2, pushHard 1, feedHigh 1|pushLight 1|push",
    "guidesBad|guides loose, worn or out of line|1|wornSaw 1||guidesBad",
    "lifted|head lifted or work pulled while the band stood in the cut|1|||lifted",
  ],
  ["cut too slow|slow cut, takes too long, slow, too long, cutting slowly|None of its own; do not force a blade that has stopped cutting.",
    "usual|nothing wrong: this is what such a cut takes|1|onTime 4|tooFine 4, tooCoarse 4, tooSlowBand 4, slowish 1, motorFull 2, pushOver 2|usual",
    "setLow|feed simply set low|2|feedLow 3, feedLowish 1|feedHigh 3, onTime 2|setLow",
    "dull|dull or one-sided teeth|2|oldBlade 3, late 1|newBlade 3, onTime 1|dull",
    "wrongPitch|pitch far from the best one|1|tooFine 4, tooCoarse 4|pitchRight 2|wrongPitch",
    "tooSlowBand|band too slow|1|tooSlowBand 4, slowish 1|fastish 2, tooFast 2|tooSlowBand",
    "sawLimit|the saw has no more to give|1|motorFull 3, motorBusy 1, pushOver 1, pushHard 1|motorEasy 1|sawLimit",
    "harder|metal harder, or its skin more abrasive, than the table takes it|1|hard 1, hardens 1||harder",
    "feedValve|feed valve, cylinder or slide sticks|1|feedLow 1, wornSaw 1|onTime 1|feedValve",
  ],
  ["burr|burrs, burr on the edge, ragged edge, flash|None of its own. Burrs cut: gloves on the piece, saw stopped.",
    "dull|dull or one-sided teeth|3|oldBlade 2|newBlade 3|dull",
    "breakOut|heavy feed as the blade breaks through|2|feedHigh 2, feedHighish 1, constantFeed 1|feedLow 1|breakOut",
    "tooCoarse|too few teeth in a thin wall|1|belowOneTooth 4, belowTwoTeeth 3, twoToThreeTeeth 1, tooCoarse 2|manyInThin 1|tooCoarse",
    "ductile|soft metal bends before it shears|1|gummy 3|shortChips 2|ductile",
    "bundleHold|bars in the bundle not all held|0|bundle 3||bundleHold",
  ],
  ["wavy lines|washboard, waves, ripples, lines on the face, steps in the cut, wavy face, chatter marks|Stop when the bar is seen or heard to move.",
    "resonance|blade and teeth in vibration|2|straightPitch 2, fastish 1||resonance",
    "feedValve|feed valve, cylinder or slide sticks|2|wornSaw 1||feedValve",
    "push|more feed than the band can stand straight|1|pushOver 3, pushHard 2, guidesFar 1, tensionLow 1|pushLight 1|push",
    "once|one tooth, or the weld, stands proud|1|newBlade 2||once",
    "moved|work or bundle moved under the blade|1|bundle 2||moved",
    "restart|the cut was stopped and started again|1|||restart",
  ],
  ["work moves|work moves in the vice, work moves in the vise, bar turns, bar spins, work slips, bundle moves, moves in the vice, moves in the vise|Stop at once. Lock out before the jaws are touched: the blade is in the cut and the bar can turn.",
    "jaws|jaws not holding|3|||jaws",
    "bundleHold|bars in the bundle not all held|0|bundle 5||bundleHold",
    "short|piece too short for the jaws|2|||short",
    "fewTeeth|too few teeth in the thinnest part|1|belowOneTooth 4, belowTwoTeeth 3, twoToThreeTeeth 1|manyInThin 1|fewTeeth",
    "feedHigh|feed too heavy|1|feedHigh 3, pushOver 1|feedLow 1|feedHigh",
    "bent|bent bar or an end that hangs|1|||bent",
  ],
  ["no coolant at the cut|coolant missing, no coolant, coolant does not reach, dry cut, cut runs dry|Magnesium: never water. Smoke at the cut: feed off and stop. Hands stay out of the running saw while nozzles are aimed.",
    "setDry|this cut is set to run dry or with mist|0|cutDry 6, cutMist 4||setDry",
    "noFlow|nozzle, tap or hose blocked or aimed wrong|3|flood 1||noFlow",
    "tankLow|tank low, or the pump draws air|2|flood 1||tankLow",
    "cannotReach|the cut is too wide for the stream to reach its middle|1|wide 2, bundle 2||cannotReach",
  ],
  ["coolant foams|foam, coolant foam, foaming|A tank that runs over makes a floor to slip on: stop the pump.",
    "tankLow|tank low, or the pump draws air|3|||tankLow",
    "tooRich|mix too rich, or water too soft for this coolant|2|||tooRich",
    "splash|the stream falls or splashes too hard|2|tooFast 2, fastish 2||splash",
    "dirtIn|soap, cleaner or foreign oil in the tank|1|wornSaw 3||dirtIn",
  ],
  ["knock once a turn|click, clicking, knock, thump, tick, bump once a turn|Stop at once: a crack or a lost tooth is passing through the work. Power off, wait for both wheels, lock out.",
    "crack|a crack is passing through the work|3|oldBlade 1, tensionHigh 1, bandThick 1||crack",
    "gap|teeth missing in one place|2|belowOneTooth 2, belowTwoTeeth 1, feedHigh 1||gap",
    "weldPoor|the weld stands proud or is off line|2|newBlade 2||weldPoor",
  ],
];

export interface Check {
  readonly state: (typeof checkStates)[keyof typeof checkStates];
  readonly text: string;
}

/** A condition by its name, and by how much it moves the score of a cause. */
export type Weight = readonly [condition: string, by: number];

export interface Cause {
  readonly key: string;
  readonly cause: string;
  /** 3 usual first suspect, 2 common, 1 possible, 0 only with its number. */
  readonly base: number;
  readonly raisedBy: readonly Weight[];
  readonly loweredBy: readonly Weight[];
  readonly check: Check;
}

export interface Symptom {
  readonly name: string;
  readonly alsoTyped: readonly string[];
  readonly stop: string;
  readonly causes: readonly Cause[];
}

const checks = new Map(
  checkRows.map((row) => {
    const [key, state, text] = row.split("|") as [string, keyof typeof checkStates, string];
    return [key, { state: checkStates[state], text }];
  }),
);

const weightsOf = (text: string): readonly Weight[] =>
  text === ""
    ? []
    : text.split(", ").map((one) => {
        const [condition, by] = one.split(" ") as [string, string];
        return [condition, Number(by)];
      });

const causeOf = (row: string): Cause => {
  const [key, cause, base, up, down, check] = row.split("|") as [string, string, string, string, string, string];
  return {
    key,
    cause,
    base: Number(base),
    raisedBy: weightsOf(up),
    loweredBy: weightsOf(down),
    check: checks.get(check)!,
  };
};

/** What can go wrong with a cut, each once. */
export const symptoms: () => readonly Symptom[] = once(() =>
  symptomRows.map(([head, ...causes]) => {
    const [name, also, stop] = head.split("|") as [string, string, string];
    return { name, alsoTyped: also.split(", "), stop, causes: causes.map(causeOf) };
  }),
);
