"""Reads DXF files with ezdxf and prints what it finds, a line a file, fields separated by blanks:
name, audit errors and fixes, unit, loops on CUT, largest gap in them, area (largest loop less the others), length of all cut
lines, holes outside the outline, duplicate entities, length on BEND."""
import math
import sys

import ezdxf


def ends(entity):
    if entity.dxftype() == "LINE":
        return entity.dxf.start, entity.dxf.end
    return entity.start_point, entity.end_point


def sweep(entity):
    return math.radians((entity.dxf.end_angle - entity.dxf.start_angle) % 360)


def length(entity):
    kind = entity.dxftype()
    if kind == "LINE":
        return entity.dxf.start.distance(entity.dxf.end)
    return entity.dxf.radius * (2 * math.pi if kind == "CIRCLE" else sweep(entity))


def chain(entities):
    """Joins entities in their order; each must begin where the last ended, either way round."""
    loops = []
    gap = 0
    for entity in entities:
        if entity.dxftype() == "CIRCLE":
            loops.append([(entity, False)])
            continue
        a, b = ends(entity)
        loop = loops[-1] if loops and not closed(loops[-1]) else None
        if loop is None:
            loops.append([(entity, False)])
            continue
        if len(loop) == 1:
            first, second = ends(loop[0][0])
            if min(first.distance(a), first.distance(b)) < min(second.distance(a), second.distance(b)):
                loop[0] = (loop[0][0], True)
        tail = end(loop[-1])
        turned = tail.distance(b) < tail.distance(a)
        gap = max(gap, tail.distance(b if turned else a))
        loop.append((entity, turned))
    for loop in loops:
        if loop[0][0].dxftype() != "CIRCLE":
            gap = max(gap, end(loop[-1]).distance(start(loop[0])))
    return loops, gap


def start(step):
    return ends(step[0])[1 if step[1] else 0]


def end(step):
    return ends(step[0])[0 if step[1] else 1]


def closed(loop):
    if loop[0][0].dxftype() == "CIRCLE":
        return True
    return len(loop) > 1 and end(loop[-1]).distance(start(loop[0])) < 1e-4


def area(loop):
    if loop[0][0].dxftype() == "CIRCLE":
        return math.pi * loop[0][0].dxf.radius ** 2
    twice = 0
    for step in loop:
        a, b = start(step), end(step)
        twice += a.x * b.y - a.y * b.x
        if step[0].dxftype() == "ARC":
            turn = sweep(step[0])
            twice += (-1 if step[1] else 1) * step[0].dxf.radius ** 2 * (turn - math.sin(turn))
    return abs(twice) / 2


def box(loop):
    points = []
    for entity, _ in loop:
        if entity.dxftype() == "LINE":
            points += list(ends(entity))
        elif entity.dxftype() == "CIRCLE":
            c, r = entity.dxf.center, entity.dxf.radius
            points += [c + (r, r), c - (r, r)]
        else:
            points += list(entity.flattening(0.01))
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return min(xs), min(ys), max(xs), max(ys)


def key(entity):
    if entity.dxftype() == "CIRCLE":
        return ("CIRCLE", round(entity.dxf.center.x, 4), round(entity.dxf.center.y, 4), round(entity.dxf.radius, 4))
    a, b = ends(entity)
    return (entity.dxftype(),) + tuple(sorted([(round(a.x, 4), round(a.y, 4)), (round(b.x, 4), round(b.y, 4))]))


for name in sys.argv[1:]:
    document = ezdxf.readfile(name)
    audit = document.audit()
    lines = [e for e in document.modelspace() if e.dxftype() in ("LINE", "ARC", "CIRCLE")]
    cut = [e for e in lines if e.dxf.layer == "CUT"]
    loops, gap = chain(cut)
    outer = max(loops, key=area)
    frame = box(outer)
    outside = 0
    for loop in loops:
        if loop is not outer:
            inner = box(loop)
            outside += not (frame[0] < inner[0] and frame[1] < inner[1] and inner[2] < frame[2] and inner[3] < frame[3])
    keys = [(e.dxf.layer,) + key(e) for e in lines]
    print(name, len(audit.errors) + len(audit.fixes), document.header.get("$INSUNITS"), len(loops), "%.9f" % gap,
          "%.6f" % (2 * area(outer) - sum(map(area, loops))), "%.6f" % sum(map(length, cut)), outside,
          len(keys) - len(set(keys)), "%.6f" % sum(length(e) for e in lines if e.dxf.layer == "BEND"))
