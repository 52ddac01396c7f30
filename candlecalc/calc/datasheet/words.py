"""The words in which data sheets print classes, statements, limits, M-factors and toxicity estimates."""

import re

from candlecalc.calc.datasheet.percentages import NUMBER

# Kinds whose category is by a printed number, in the order they are looked for: longer names first.
KINDS = [
    ("STOT SE", r"STOT[\s-]*SE|(?:specific )?target organ toxicity[\s,:-]*\(?single exposure\)?"),
    ("STOT RE", r"STOT[\s-]*RE|(?:specific )?target organ toxicity[\s,:-]*\(?repeated exposure\)?"),
    ("Aquatic Chronic", r"aquatic[\s-]*chronic|chronic[\s-]*aquatic|(?:hazard\w* to the )?aquatic environment[\s,:-]*"
     r"(?:chronic|long[\s-]term)(?: \(?chronic\)?)?|aquatic toxicity[\s,:(-]*chronic"),
    ("Aquatic Acute", r"aquatic[\s-]*acute|acute[\s-]*aquatic|(?:hazard\w* to the )?aquatic environment[\s,:-]*"
     r"(?:acute|short[\s-]term)(?: \(?acute\)?)?|aquatic toxicity[\s,:(-]*acute"),
    ("Acute Tox.", r"acute[\s-]*tox(?:icity)?"),
    ("Skin Corr.", r"skin[\s-]*corr(?:osion)?(?:[\s.]*/\s*irrit(?:ation)?)?"),
    ("Skin Irrit.", r"skin[\s-]*irrit(?:ation|ant)?"),
    ("Eye Dam.", r"(?:serious\s+)?eye[\s-]*dam(?:age)?(?:[\s.]*/\s*(?:eye\s+)?irrit(?:ation)?)?"),
    ("Eye Irrit.", r"(?:serious\s+)?eye[\s-]*irrit(?:ation|ant)?"),
    ("Skin Sens.", r"skin[\s-]*sens(?:iti[sz](?:ation|er))?|sensiti[sz]ation[\s,:(-]*skin"),
    ("Resp. Sens.", r"resp(?:iratory)?[\s.-]*sens(?:iti[sz](?:ation|er))?|sensiti[sz]ation[\s,:(-]*resp\w*"),
    ("Muta.", r"(?:germ cell\s+)?muta(?:genicity)?"),
    ("Carc.", r"carc(?:inogenicity)?"),
    ("Repr.", r"repr(?:oductive toxicity|oduction)?|toxic to reproduction"),
    ("Lact.", r"lact(?:ation)?"),
    ("Asp. Tox.", r"asp(?:iration)?[\s.-]*(?:tox(?:icity)?|hazard)"),
    ("Ozone", r"(?:hazard\w* to the )?ozone(?: layer)?"),
    ("ED HH", r"ED[\s-]*HH|endocrine disrupti\w+ for human health"),
    ("ED ENV", r"ED[\s-]*ENV|endocrine disrupti\w+ for the environment"),
    ("vPvB", r"vPvB"), ("vPvM", r"vPvM"), ("PBT", r"PBT"), ("PMT", r"PMT"),
    ("Flam. Liq.", r"flam(?:mable)?[\s.-]*liq(?:uids?)?"),
    ("Flam. Sol.", r"flam(?:mable)?[\s.-]*sol(?:ids?)?"),
]  # fmt: skip
# Classes of physics and chemistry that only a test decides.
BY_TEST = r"met[\s.]*corr\w*|ox[\s.]*(?:liq|sol|gas)\w*|flam[\s.]*gas\w*|aerosol|self[\s-]*(?:heat|react)\w*|" \
    r"water[\s-]*react\w*|pyr[\s.]*(?:liq|sol)\w*|org[\s.]*perox\w*|press[\s.]*gas|expl\w*"  # fmt: skip
CATEGORY = re.compile(
    r"[\s.,:()/-]*(?:(?:sub-?)?categor(?:y|ies)|cat\b\.?)?[\s.:-]*(?P<category>[1-5][ABC]?)(?![\w%]|\s?%|[.,]\d)", re.I
)
# Categories of the UN system that the EU rules do not have.
OUTSIDE = {
    ("Acute Tox.", "5"),
    ("Skin Irrit.", "3"),
    ("Aquatic Acute", "2"),
    ("Aquatic Acute", "3"),
    ("Flam. Liq.", "4"),
}
NO_CATEGORY = {"Lact.", "vPvB", "vPvM", "PBT", "PMT"}

ROUTE = r"(?:oral(?:ly)?|dermal|inhal\w*\.?|vapou?rs?|dusts?|mists?|gas(?:es)?)"
ROUTES = rf"[(\[]?\s*{ROUTE}(?:[\s,/:(-]*(?:(?:and|or)\s+)?{ROUTE})*\s*[)\]]?"
FOLLOWING = re.compile(rf"\s*[-,:]?\s*{ROUTES}", re.I)  # the route behind a class
# On what an estimate was found, and for how long: printed among the words of its way.
SUBJECT = r"(?:rats?|mouse|mice|rabbits?|guinea[\s-]?pigs?|animals?|females?|males?|exposure|\d+\s?h(?:ours?|rs?)?)\b"
WAY = rf"(?:{ROUTE}|{SUBJECT})"
WAYS = rf"[(\[]?\s*{WAY}(?:[\s,;/:(-]*(?:(?:and|or)\s+)?{WAY}){{0,9}}\s*[)\]]?"
BIG = r"\d{1,3}(?: \d{3})+|\d+(?:[.,]\d+)?"
# ATE (oral) = 500 mg/kg; oral: ATE 500; LD50 (oral, rat): 1680 mg/kg; LD50 > 2000 mg/kg (dermal); ATE (vapour) unknown
ESTIMATE = re.compile(
    rf"(?P<before>{WAYS}[\s,:-]*)?\b(?:ATE|LD\s?50|LC\s?50)(?:\s?mix)?[\s,:/-]*(?P<middle>{WAYS})?[\s:=,-]*"
    rf"(?:(?P<none>unknown|no data|not known)|(?P<sign>>=?)?\s*(?P<low>{BIG})(?:\s*-\s*(?:{BIG}))?"
    r"\s*(?P<unit>mg\s*/\s*kg(?:\s*\(?(?:bw\b|body\s?weight\b)\)?)?|mg\s*/\s*l\b(?:\s*/\s*4\s*h)?|ppmv?)?)"
    rf"(?(before)|(?P<after>\s*{WAYS})?)",
    re.I,
)
UNKNOWN = re.compile(
    rf"(?:(?P<water>aquatic|environment\w*)|(?P<route>{ROUTES})?[\s:-]*(?:acute\s+)?)\s*tox(?:icity|\.)?[\s:=(-]*"
    r"(?:is\s+)?(?:unknown|no data|not known)\)?",
    re.I,
)
# M = 10; M (acute) = 1; M-factor chronic: 100; M-factor 10; M-factors: acute 10, chronic 1
FACTOR = re.compile(
    r"(?:\b(?P<before>acute|chronic)\s+)?\bM(?:\s*-?\s*factors?)?\s*[:=]?\s*[(\[]?\s*(?P<middle>acute|chronic)?"
    r"(?:\s+toxicity)?[)\]]?\s*(?:[:=]|\b(?:of|is)\b)?\s*(?<!\w)(?P<value>\d{1,3}(?:[ .,]\d{3})+|\d+)(?![\d.,]*\d|\s?%)"
    r"(?:\s*[(\[]?(?P<after>acute|chronic)\b(?!\s*[:=]?\s*\d)[)\]]?)?",
    re.I,
)
# The second of two behind one M: "M-factors: acute 10, chronic 1"; "M = 10 (acute), 1 (chronic)"
SECOND_FACTOR = re.compile(
    r"\s*(?:[,;/&]|\band\b)\s*(?:[(\[]?(?P<middle>acute|chronic)\b[)\]]?\s*[:=]?\s*)?"
    r"(?P<value>\d{1,3}(?:[ .,]\d{3})+|\d+)(?![\d.,]*\d|\s?%)(?:\s*[(\[]?(?P<after>acute|chronic)\b[)\]]?)?",
    re.I,
)
# C >= 0.5 %; 3 % <= C < 10 %; without the sign only in the column of limits: 3 - 10 %; 0.5 %
LIMIT = re.compile(
    rf"(?P<between>{NUMBER})\s*%?\s*<=?\s*C\s*<=?\s*{NUMBER}\s*%?"
    rf"|(?:\b(?:C|conc\.?)\s*)?>=?\s*(?P<low>{NUMBER})\s*%?(?:\s*(?:[-,]|and|to)?\s*(?:C\s*)?<=?\s*{NUMBER}\s*%?)?",
    re.I,
)
PLAIN_LIMIT = re.compile(rf"(?P<low>{NUMBER})\s*%?(?:\s*-\s*<?\s*{NUMBER})?\s*%", re.I)
CODE = re.compile(r"(?<![A-Za-z])(?P<code>(?:[Ee][Uu])?[Hh]\s?-?\d{3})(?P<suffix>[A-Za-z]{0,2})(?![A-Za-z0-9])")
CLASS = re.compile("|".join(rf"(?P<k{n}>\b(?:{words})(?![a-z]))" for n, (_, words) in enumerate(KINDS)), re.I)
TESTED = re.compile(rf"\b(?:{BY_TEST})(?:{CATEGORY.pattern})?", re.I)
NOTHING = re.compile(r"\b(?:not classified|no classification|none|n\.?\s?c\.?)(?!\w)", re.I)
# Words that say nothing by themselves.
SAYING_NOTHING = """
    and or of by the is category categories cat hazard hazards class code codes clp statement statements eu specific
    limit limits concentration conc c scl m factor factors oral orally dermal inhalation inhalative inhal vapour vapours
    vapor vapors dust dusts mist mists gas gases rat rats rabbit rabbits mouse mice guinea pig pigs animal animals
    male males female females exposure bw body weight h
"""
FILLERS = frozenset(SAYING_NOTHING.split())
