#!/usr/bin/env python3
"""Answers the comparisons' questions again, from a CSV of jobs, with the standard library only.

Written from the definitions, not from the Java: loops over rows, no shared totals, its own
Student's t and its own elimination. Usage: compare_again.py JOBS.csv > ANSWERS.csv
"""
import csv
import math
import sys
from collections import defaultdict

WAGE, HELPER, GAS_MINUTE, SETUP, SETUP_GAS = 30.0, 15.0, 0.04, 6.0, 5.0


def beta_fraction(a, b, x):
    tiny = 1e-300
    c, d = 1.0, 1.0 - (a + b) * x / (a + 1)
    d = 1.0 / (d if abs(d) > tiny else tiny)
    h = d
    for m in range(1, 500):
        for num in (m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m)),
                    -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1))):
            d = 1 + num * d
            d = 1.0 / (d if abs(d) > tiny else tiny)
            c = 1 + num / c
            c = c if abs(c) > tiny else tiny
            h *= d * c
        if abs(d * c - 1) < 1e-15:
            break
    return h


def beta_regular(a, b, x):
    if x <= 0:
        return 0.0
    if x >= 1:
        return 1.0
    front = math.exp(math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b)
                     + a * math.log(x) + b * math.log(1 - x))
    if x < (a + 1) / (a + b + 2):
        return front * beta_fraction(a, b, x) / a
    return 1 - front * beta_fraction(b, a, 1 - x) / b


def t975(df):
    low, high = 0.0, 1e4
    for _ in range(200):
        t = (low + high) / 2
        upper_tail = beta_regular(df / 2, 0.5, df / (df + t * t)) / 2
        if upper_tail > 0.025:
            low = t
        else:
            high = t
    return (low + high) / 2


def cents(x):
    return math.floor(x * 100 + 0.5 + 1e-9) / 100


def number(row, name):
    return float(row[name])


def minutes(row):
    return number(row, 'job') + number(row, 'drive') + number(row, 'making')


def margin(row):
    return number(row, 'charged') - sum(
        number(row, part) for part in ('materials', 'gas', 'sundries', 'travel', 'overhead'))


def value(measure, row):
    if measure == 'shape minutes per shoe':
        return number(row, 'shape') / number(row, 'shoes') if row['shape'] else None
    if row['measured'] != 'yes':
        return None
    if measure == 'job minutes':
        return number(row, 'job')
    if measure == 'cost per job':
        labour = cents(((number(row, 'job') + number(row, 'making')) * WAGE
                        + number(row, 'helper') * HELPER) / 60)
        return number(row, 'materials') + number(row, 'gas') + number(row, 'sundries') + labour
    return margin(row) / (minutes(row) / 60)


def entry(question, row):
    """Side and stratum and effect of a job, or None."""
    helper = number(row, 'helper') > 0
    if int(row['shoes']) == 0 or row['kind'] == 'aluminium' or row['shaping'] == 'none':
        return None
    if question == 'hot with cold':
        name = row['compare_as'] or row['work']
        return ('a' if row['shaping'] == 'hot' else 'b',
                (name, row['kind'], row['shoes'], helper), (name, helper))
    if row['reason'] == 'lost shoe' or int(row['new_shoes']) < int(row['shoes']):
        return None
    name = row['compare_as'] or row['shoes']
    return ('a' if row['kind'] == 'handmade' else 'b',
            (name, row['shaping'], helper), (name, row['shaping'], helper))


def estimate(rows):
    """rows: (horse, stratum, side, value). The weighted difference and what it is made of."""
    strata = defaultdict(lambda: {'a': [], 'b': []})
    for horse, stratum, side, v in rows:
        strata[stratum][side].append((horse, v))
    used = {k: s for k, s in strata.items() if len(s['a']) >= 2 and len(s['b']) >= 2}
    if not used:
        return None
    total, parts = 0.0, []
    mean = {'a': 0.0, 'b': 0.0}
    for s in used.values():
        na, nb = len(s['a']), len(s['b'])
        total += na * nb / (na + nb)
    for s in used.values():
        na, nb = len(s['a']), len(s['b'])
        share = na * nb / (na + nb) / total
        for side in 'ab':
            values = [v for _, v in s[side]]
            m = math.fsum(values) / len(values)
            mean[side] += share * m
            var = math.fsum((v - m) ** 2 for v in values) / (len(values) - 1)
            parts.append((share * share * var / len(values), len(values) - 1))
    return used, mean['a'], mean['b'], parts


def answer(rows):
    found = estimate(rows)
    if found is None:
        return None
    used, mean_a, mean_b, parts = found
    d = mean_a - mean_b
    var = math.fsum(p for p, _ in parts)
    df = var ** 2 / math.fsum(p * p / f for p, f in parts)
    reach = t975(df) * math.sqrt(var)
    kept = [r for r in rows if r[1] in used]
    horses = sorted({r[0] for r in kept})
    thetas = []
    for horse in horses:
        rest = estimate([r for r in kept if r[0] != horse])
        thetas.append(None if rest is None else rest[1] - rest[2])
    free = len(horses) - 2 * len(used)
    low_horse = high_horse = None
    if free >= 1 and None not in thetas:
        middle = math.fsum(thetas) / len(thetas)
        v = (len(horses) - 1) / len(horses) * math.fsum((t - middle) ** 2 for t in thetas)
        low_horse, high_horse = d - t975(free) * math.sqrt(v), d + t975(free) * math.sqrt(v)
    return {
        'n_a': sum(len(s['a']) for s in used.values()),
        'n_b': sum(len(s['b']) for s in used.values()),
        'mean_a': mean_a, 'mean_b': mean_b, 'difference': d,
        'low': d - reach, 'high': d + reach, 'low_horse': low_horse, 'high_horse': high_horse,
        'horses_a': len({h for s in used.values() for h, _ in s['a']}),
        'horses_b': len({h for s in used.values() for h, _ in s['b']})}


def eliminate(matrix):
    """Reduced row echelon form in place; returns the pivot columns."""
    pivots, top = [], 0
    for col in range(len(matrix[0]) - 1):
        best = max(range(top, len(matrix)), key=lambda r: abs(matrix[r][col]), default=None)
        if best is None or abs(matrix[best][col]) < 1e-8:
            continue
        matrix[top], matrix[best] = matrix[best], matrix[top]
        pivot = matrix[top][col]
        matrix[top] = [x / pivot for x in matrix[top]]
        for r in range(len(matrix)):
            if r != top and matrix[r][col]:
                factor = matrix[r][col]
                matrix[r] = [x - factor * y for x, y in zip(matrix[r], matrix[top])]
        pivots.append(col)
        top += 1
        if top == len(matrix):
            break
    return pivots


def guard(rows):
    """Normal equations with a column for each horse and each effect; the side comes last."""
    horses = sorted({r[0] for r in rows})
    effects = sorted({str(r[1]) for r in rows})
    names = [('h', h) for h in horses] + [('e', e) for e in effects[1:]] + [('s', 'a')]
    size = len(names)
    matrix = [[0.0] * (size + 1) for _ in range(size)]
    centre = math.fsum(r[3] for r in rows) / len(rows)
    design = []
    for horse, effect, side, v in rows:
        x = [1.0 if name in (('h', horse), ('e', str(effect)), ('s', side)) else 0.0
             for name in names]
        design.append((x, v - centre))
        ones = [i for i, q in enumerate(x) if q]
        for i in ones:
            for j in ones:
                matrix[i][j] += 1
            matrix[i][size] += v - centre
    pivots = eliminate(matrix)
    if size - 1 not in pivots:
        return None
    beta = [0.0] * size
    for r, col in enumerate(pivots):
        beta[col] = matrix[r][size]
    rss = math.fsum((y - math.fsum(b * q for b, q in zip(beta, x))) ** 2 for x, y in design)
    df = len(rows) - len(pivots)
    # the side's own variation that the other columns leave, for its standard error
    others = [c for c in range(size - 1)]
    side_matrix = [[0.0] * size for _ in range(size - 1)]
    for x, _ in design:
        ones = [i for i in others if x[i]]
        for i in ones:
            for j in ones:
                side_matrix[i][j] += 1
            side_matrix[i][size - 1] += x[size - 1]
    pivots2 = eliminate(side_matrix)
    gamma = [0.0] * (size - 1)
    for r, col in enumerate(pivots2):
        gamma[col] = side_matrix[r][size - 1]
    left = math.fsum(
        (x[size - 1] - math.fsum(g * q for g, q in zip(gamma, x))) ** 2 for x, _ in design)
    error = math.sqrt(rss / df / left)
    return beta[size - 1], beta[size - 1] - t975(df) * error, beta[size - 1] + t975(df) * error


def wilson(part, whole):
    z = 1.959963984540054
    p = part / whole
    centre = (p + z * z / (2 * whole)) / (1 + z * z / whole)
    reach = z * math.sqrt(p * (1 - p) / whole + z * z / (4 * whole * whole)) / (1 + z * z / whole)
    return centre - reach, centre + reach


def lost_shoes(jobs):
    by_horse = defaultdict(lambda: defaultdict(list))
    for row in jobs:
        by_horse[row['horse']][row['date']].append(row)
    seen = {}
    for horse, days in by_horse.items():
        on = {'hot': 0.0, 'cold': 0.0, 'other': 0.0}
        tally = {'hot': [0.0, 0.0], 'cold': [0.0, 0.0]}
        for day in sorted(days):
            rows = days[day]
            worn = sum(on.values())
            share = min(1.0, sum(int(r['lost'] or 0) for r in rows) / worn) if worn else 0.0
            for method in tally:
                tally[method][0] += on[method]
                tally[method][1] += on[method] * share
            call = any(r['reason'] == 'lost shoe' for r in rows)
            on = {m: on[m] * (1 - share) if call else 0.0 for m in on}
            for r in rows:
                steel = r['kind'] != 'aluminium' and r['shaping'] in tally
                on[r['shaping'] if steel else 'other'] += int(r['shoes'])
        if tally['hot'][0] or tally['cold'][0]:
            seen[horse] = tally
    def share(tallies, method):
        on = math.fsum(t[method][0] for t in tallies)
        return (math.fsum(t[method][1] for t in tallies) / on, on) if on else (None, 0)
    p_hot, n_hot = share(seen.values(), 'hot')
    p_cold, n_cold = share(seen.values(), 'cold')
    l1, u1 = wilson(p_hot * n_hot, n_hot)
    l2, u2 = wilson(p_cold * n_cold, n_cold)
    d = p_hot - p_cold
    low = d - math.sqrt((p_hot - l1) ** 2 + (u2 - p_cold) ** 2)
    high = d + math.sqrt((u1 - p_hot) ** 2 + (p_cold - l2) ** 2)
    thetas = []
    for horse in seen:
        rest = [t for h, t in seen.items() if h != horse]
        thetas.append(share(rest, 'hot')[0] - share(rest, 'cold')[0])
    g = len(thetas)
    middle = math.fsum(thetas) / g
    v = (g - 1) / g * math.fsum((t - middle) ** 2 for t in thetas)
    reach = t975(g - 2) * math.sqrt(v)
    return {'n_a': n_hot, 'n_b': n_cold, 'mean_a': p_hot, 'mean_b': p_cold, 'difference': d,
            'low': low, 'high': high, 'low_horse': d - reach, 'high_horse': d + reach,
            'low_a': l1, 'high_a': u1, 'low_b': l2, 'high_b': u2}


def handmade_gap(rows, making=None, extra=0.0):
    data = []
    for row, (side, stratum, _) in rows:
        t, over, rest = minutes(row), number(row, 'overhead'), margin(row) + number(row, 'overhead')
        hourly = 60 * over / t
        if side == 'a':
            rest += extra
            if making is not None:
                t = number(row, 'job') + number(row, 'drive') + making * int(row['new_shoes'])
        data.append((row['horse'], stratum, side, 60 * rest / t - hourly))
    _, mean_a, mean_b, _ = estimate(data)
    return mean_a - mean_b


def bisect(function, low, high):
    for _ in range(100):
        middle = (low + high) / 2
        if function(low) * function(middle) <= 0:
            high = middle
        else:
            low = middle
    return (low + high) / 2


def main():
    with open(sys.argv[1], newline='', encoding='utf-8') as file:
        jobs = list(csv.DictReader(file))
    out = csv.writer(sys.stdout, lineterminator='\n')
    out.writerow(['question', 'measure', 'figure', 'value'])
    saved = None
    for question in ('hot with cold', 'handmade with keg'):
        for measure in ('shape minutes per shoe', 'job minutes', 'cost per job', 'earned per hour'):
            rows, effects = [], []
            for row in jobs:
                where, v = entry(question, row), value(measure, row)
                if where is not None and v is not None:
                    rows.append((row['horse'], where[1], where[0], v))
                    effects.append((row['horse'], where[2], where[0], v))
            found = answer(rows)
            if question == 'hot with cold' and measure == 'shape minutes per shoe':
                saved = -found['difference']
            second = guard(effects)
            found['guard_difference'], found['guard_low'], found['guard_high'] = second
            for name, v in found.items():
                out.writerow([question, measure, name, '' if v is None else repr(v)])
    for name, v in lost_shoes(jobs).items():
        out.writerow(['hot with cold', 'lost shoes', name, repr(v)])
    hot = [r for r in jobs if r['shaping'] == 'hot' and r['kind'] != 'aluminium']
    per_shoe = (GAS_MINUTE * sum(number(r, 'forge') for r in hot)
                / sum(int(r['shoes']) for r in hot))
    stop = (SETUP * WAGE / 60 + SETUP_GAS * GAS_MINUTE) / (saved * WAGE / 60 - per_shoe)
    out.writerow(['hot with cold', 'break-even', 'shoes per stop', repr(stop)])
    rows = []
    for row in jobs:
        where = entry('handmade with keg', row)
        if where is not None and value('earned per hour', row) is not None:
            rows.append((row, where))
    kept = estimate([(r['horse'], w[1], w[0], 0.0) for r, w in rows])[0]
    rows = [(r, w) for r, w in rows if w[1] in kept]
    extra = bisect(lambda x: handmade_gap(rows, None, x), -500.0, 500.0)
    out.writerow(['handmade with keg', 'break-even', 'extra price per set', repr(extra)])
    making = bisect(lambda m: handmade_gap(rows, m), 0.0, 480.0)
    out.writerow(['handmade with keg', 'break-even', 'making minutes per shoe', repr(making)])


if __name__ == '__main__':
    main()
