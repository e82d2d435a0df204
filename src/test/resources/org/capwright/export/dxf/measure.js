// Reads DXF files with dxf-parser and prints for each: name, unit, circles on CUT, length of all lines, arcs and circles on CUT.
const fs = require("fs");
const module_ = require("dxf-parser");
const Parser = module_.DxfParser || module_.default || module_;
for (const name of process.argv.slice(2)) {
  const file = new Parser().parseSync(fs.readFileSync(name, "utf8"));
  const cut = file.entities.filter((e) => e.layer === "CUT");
  let length = 0;
  for (const e of cut) {
    if (e.type === "LINE") {
      length += Math.hypot(e.vertices[1].x - e.vertices[0].x, e.vertices[1].y - e.vertices[0].y);
    } else if (e.type === "ARC") {
      const turn = (e.endAngle - e.startAngle) % (2 * Math.PI);
      length += e.radius * (turn < 0 ? turn + 2 * Math.PI : turn);
    } else if (e.type === "CIRCLE") {
      length += 2 * Math.PI * e.radius;
    } else {
      throw new Error("unexpected " + e.type);
    }
  }
  console.log(name, file.header["$INSUNITS"], cut.filter((e) => e.type === "CIRCLE").length, length.toFixed(6));
}
