#!/usr/bin/python3
"""Prepares the program's faces from Debian's packages of Noto. See README.md beside this file.

prepare.py NOTO_FOLDER CJK_FOLDER RESOURCES

NOTO_FOLDER holds the .ttf files of fonts-noto-core, CJK_FOLDER the .ttc file of fonts-noto-cjk,
RESOURCES is src/main/resources/fonts.
"""
import os
import sys

from fontTools import subset
from fontTools.pens.cu2quPen import Cu2QuPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTCollection, TTFont, newTable

# 1 January 2026: equal input gives equal bytes.
os.environ["SOURCE_DATE_EPOCH"] = "1767225600"

# How far a curve may lie from the original, in thousandths of the type size.
CURVES = 2

# A run of a script holds these beside its own letters; all else comes from the text faces.
JOINERS = {0x20, 0xA0, 0x200C, 0x200D, 0x25CC}

SCRIPTS = {
    "Hebrew": [(0x0590, 0x05FF), (0xFB1D, 0xFB4F)],
    "Arabic": [
        (0x0600, 0x06FF),
        (0x0750, 0x077F),
        (0x08A0, 0x08FF),
        (0xFB50, 0xFDFF),
        (0xFE70, 0xFEFC),
    ],
    "Devanagari": [(0x0900, 0x097F), (0x1CD0, 0x1CFF), (0xA8E0, 0xA8FF)],
    "Thai": [(0x0E00, 0x0E7F)],
}

# Signs that the text faces lack and reports use: at most, at least, about, leads to.
SIGNS = [0x2264, 0x2265, 0x2248, 0x2192]

# The minus has the outline of the face's own en dash: right width, height and weight.
MINUS, EN_DASH = 0x2212, 0x2013


def characters(ranges):
    return {c for first, last in ranges for c in range(first, last + 1)}


def encodable(codec, ranges):
    """The characters of those ranges that a published character set holds."""
    held = set()
    for c in characters(ranges):
        try:
            chr(c).encode(codec)
            held.add(c)
        except UnicodeEncodeError:
            pass
    return held


HAN = [(0x3400, 0x4DBF), (0x4E00, 0x9FFF), (0xF900, 0xFAFF), (0x20000, 0x2A6DF)]
EAST_ASIAN_SIGNS = characters([(0x3000, 0x303F), (0xFF00, 0xFFEF)])
KANA = characters([(0x3040, 0x30FF), (0x31F0, 0x31FF)])

EAST_ASIAN = {
    # All Han letters of Unicode 1.1 and the common ones added since (GB 18030's first two parts).
    "SC": characters([(0x4E00, 0x9FFF), (0x3100, 0x312F)])
    | encodable("gb18030", [(0xF900, 0xFAFF)])
    | EAST_ASIAN_SIGNS,
    # JIS X 0213, the letters that Windows adds to JIS X 0208, which names are full of, and one more.
    "JP": encodable("euc_jis_2004", HAN)
    | encodable("cp932", HAN)
    | {0x20BB7}
    | KANA
    | EAST_ASIAN_SIGNS,
    # All modern syllables.
    "KR": characters([(0xAC00, 0xD7A3), (0x1100, 0x11FF), (0x3130, 0x318F)]),
}


# Height above and below the line of the text faces: a name in another script leaves the rows of a
# table as high as they are.
ASCENT, DESCENT = 1069, -293


def save(font, path):
    head, horizontal, windows = font["head"], font["hhea"], font["OS/2"]
    assert head.unitsPerEm == 1000
    horizontal.ascent, horizontal.descent, horizontal.lineGap = ASCENT, DESCENT, 0
    windows.sTypoAscender, windows.sTypoDescender, windows.sTypoLineGap = ASCENT, DESCENT, 0
    windows.usWinAscent, windows.usWinDescent = ASCENT, -DESCENT
    for name in list(font["name"].names):
        # Copyright, family, style, version, PostScript name and licence stay.
        if name.nameID not in (0, 1, 2, 3, 4, 5, 6, 13, 14):
            font["name"].names.remove(name)
    font["head"].modified = font["head"].created
    font.recalcTimestamp = False
    font.save(path)
    print(os.path.getsize(path), os.path.basename(path))


def subsetted(font, keep, features):
    options = subset.Options()
    options.layout_features = features
    options.hinting = False
    options.desubroutinize = True
    options.notdef_outline = True
    options.glyph_names = False
    options.name_IDs = ["*"]
    options.drop_tables += ["BASE", "VORG", "vhea", "vmtx", "DSIG", "gasp"]
    if not features:
        options.drop_tables += ["GSUB", "GPOS", "GDEF"]
    subsetter = subset.Subsetter(options)
    subsetter.populate(unicodes=keep)
    subsetter.subset(font)
    return font


def quadratic(font):
    """TrueType outlines for cubic ones: one way of embedding serves all faces."""
    order = font.getGlyphOrder()
    shapes = font.getGlyphSet()
    glyphs = {}
    for name in order:
        pen = TTGlyphPen(None)
        shapes[name].draw(Cu2QuPen(pen, CURVES, reverse_direction=True))
        glyphs[name] = pen.glyph()
    font["loca"] = newTable("loca")
    glyf = font["glyf"] = newTable("glyf")
    glyf.glyphOrder = order
    glyf.glyphs = glyphs
    for name in order:
        glyphs[name].recalcBounds(glyf)
    font["hmtx"].metrics = {
        name: (width, getattr(glyphs[name], "xMin", 0))
        for name, (width, _) in font["hmtx"].metrics.items()
    }
    maxp = font["maxp"]
    maxp.tableVersion = 0x00010000
    for field in (
        "maxZones maxTwilightPoints maxStorage maxFunctionDefs maxInstructionDefs"
        " maxStackElements maxSizeOfInstructions maxComponentElements maxPoints maxContours"
        " maxCompositePoints maxCompositeContours maxComponentDepth"
    ).split():
        setattr(maxp, field, 1 if field == "maxZones" else 0)
    font["post"].formatType = 3.0
    del font["CFF "]
    font.sfntVersion = "\000\001\000\000"
    return font


def scripts(noto, out):
    for script, ranges in SCRIPTS.items():
        for weight in ("Regular", "Bold"):
            font = TTFont(f"{noto}/NotoSans{script}-{weight}.ttf")
            keep = characters(ranges) | JOINERS
            save(subsetted(font, keep, ["*"]), f"{out}/NotoSans{script}-{weight}.ttf")


def east_asian(cjk, out):
    for region, keep in EAST_ASIAN.items():
        collection = TTCollection(f"{cjk}/NotoSansCJK-Regular.ttc", lazy=True)
        font = next(
            f for f in collection.fonts if f["name"].getDebugName(1) == f"Noto Sans CJK {region}"
        )
        font = quadratic(subsetted(font, keep | {0x20, 0xA0}, []))
        save(font, f"{out}/NotoSansCJK{region.lower()}-Regular.ttf")


def add(font, sign, outline, width):
    name = f"uni{sign:04X}"
    font["glyf"][name] = outline
    outline.recalcBounds(font["glyf"])
    font["hmtx"][name] = (width, outline.xMin)
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap[sign] = name


def drawn(font, sign):
    name = font.getBestCmap()[sign]
    pen = TTGlyphPen(None)
    font.getGlyphSet()[name].draw(pen)
    return pen.glyph(), font["hmtx"][name][0]


def signs(noto, resources):
    """The text faces with a minus of their own and the signs of Noto Sans Math."""
    for face in ("NotoSans-Regular", "NotoSans-Bold", "NotoSerif-Regular", "NotoSerif-Bold"):
        font = TTFont(f"{noto}/{face}.ttf")
        math = TTFont(f"{noto}/NotoSansMath-Regular.ttf")
        add(font, MINUS, *drawn(font, EN_DASH))
        for sign in SIGNS:
            add(font, sign, *drawn(math, sign))
        font["head"].modified = font["head"].created
        font.recalcTimestamp = False
        font.save(f"{resources}/{face}.ttf")
        print(face)


def main():
    noto, cjk, resources = sys.argv[1:4]
    out = f"{resources}/scripts"
    os.makedirs(out, exist_ok=True)
    signs(noto, resources)
    scripts(noto, out)
    east_asian(cjk, out)


main()
