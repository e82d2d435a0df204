// Packs the jobs of RectangleJobs once more with maxrects-packer and prints a table. See docs/nesting-benchmark.md.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const { MaxRectsPacker, PACKING_LOGIC } = createRequire(process.cwd() + "/")("maxrects-packer");
const spacing = 5;
const margin = 6;

function sheets(sizes, logic) {
  const packer = new MaxRectsPacker(3048, 1219, spacing, { smart: false, pot: false, square: false, allowRotation: true, border: margin, logic });
  packer.addArray(sizes.map(([width, height]) => ({ width, height, data: 0 })));
  return packer.bins.length;
}

console.log("| job | rectangles | bound | here | peer |\n|---|---|---|---|---|");
let worse = 0;
let ours = 0;
let theirs = 0;
for (const line of readFileSync(process.argv[2], "utf8").trim().split("\n")) {
  const [seed, here, bound, ...texts] = line.split(" ");
  const sizes = texts.map((text) => text.split("x").map(Number));
  const peer = Math.min(...Object.values(PACKING_LOGIC).filter((logic) => typeof logic === "number").map((logic) => sheets(sizes, logic)));
  console.log(`| ${seed} | ${sizes.length} | ${bound} | ${here} | ${peer} |`);
  worse += Number(here) > peer ? 1 : 0;
  ours += Number(here);
  theirs += peer;
}
console.log(`\nsheets in all: here ${ours}, peer ${theirs}; worse than the peer in ${worse} jobs`);
