"""What the functions need of the language they were written in: its values, arithmetic and methods.

Numbers are int or float, text is str, TRUE and FALSE are bool, nothing (null and undefined) is None,
lists are list, maps and sets keep the order of insertion, objects are _Obj. Every name begins with
"_", so that none hides one of the functions' own.
"""
import functools
import json
import keyword
import math
import re
from decimal import ROUND_HALF_UP, Decimal, localcontext
from types import SimpleNamespace

_inf = math.inf
_nan = math.nan
_isinstance = isinstance
# What other script engines have under a name, and this one has not.
_absent = None

_SPACES = "\t\n\x0b\x0c\r \xa0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u2028\u2029\u202f\u205f\u3000\ufeff"


# Objects

class _Plain:
    """A class of the functions' own, whose objects have all that is asked of them: quick to ask."""


class _Base(_Plain):
    """What has not been set reads as nothing."""

    def __getattr__(self, name):
        if name[:2] == "__":
            raise AttributeError(name)
        return None


class _Obj(SimpleNamespace):
    """An object made of its entries; equal to itself alone."""

    __eq__ = object.__eq__
    __ne__ = object.__ne__
    __hash__ = object.__hash__

    def __getattr__(self, name):
        if name[:2] == "__":
            raise AttributeError(name)
        return None


class _Error(Exception):
    def __init__(self, message=None, *_):
        self.message = "" if message is None else _str(message)
        Exception.__init__(self, self.message)
        self.name = "Error"

    def __getattr__(self, name):
        if name[:2] == "__":
            raise AttributeError(name)
        return None


def _caught(error):
    """What a catch clause is given: an error of the interpreter's own has a message too."""
    if _isinstance(error, _Error):
        return error
    own = _Error("%s: %s" % (type(error).__name__, error))
    own.__cause__ = error
    return own


def _raisable(error):
    if _isinstance(error, BaseException):
        return error
    raise TypeError("only errors can be thrown")


class _Function(_Base):
    """A function that is an object too, with a prototype for what it constructs."""

    def __init__(self, body, takes_self):
        self.body = body
        self.takes_self = takes_self
        self.prototype = _Obj()

    def __call__(self, *cells):
        return self.body(None, *cells) if self.takes_self else self.body(*cells)


class _Made(_Base):
    """What a _Function constructs: what it lacks is looked for in the prototype."""

    def __init__(self, maker):
        self.__dict__["_maker"] = maker

    def __getattr__(self, name):
        if name[:2] == "__":
            raise AttributeError(name)
        return getattr(self.__dict__["_maker"].prototype, name)


def _construct(maker, *cells):
    if type(maker) is not _Function:
        return maker(*cells)
    made = _Made(maker)
    maker.body(made, *cells)
    return made


_KEYWORDS = frozenset(keyword.kwlist)


def _key(name):
    """A property's name as an attribute."""
    text = name if type(name) is str else _str(name)
    return text + "_" if text in _KEYWORDS else text


def _unkey(name):
    return name[:-1] if name[-1:] == "_" and name[:-1] in _KEYWORDS else name


def _own(value):
    """The entries of what is spread into an object."""
    if value is None:
        return {}
    if type(value) is _Obj or _isinstance(value, _Plain):
        return vars(value)
    raise TypeError("only objects can be spread into objects")


def _rest(value, *names):
    return _Obj(**{key: entry for key, entry in vars(value).items() if key not in names})


def _ordered(value):
    """The names of an object's entries as the language lists them: whole numbers first."""
    names = [_unkey(key) for key in vars(value)]
    if any(name.isdigit() for name in names):
        whole = [name for name in names if name.isdigit() and (name == "0" or name[0] != "0")]
        names = sorted(whole, key=int) + [name for name in names if name not in whole]
    return names


def _Object_keys(value):
    return _ordered(value)


def _Object_values(value):
    return [vars(value)[_key(name)] for name in _ordered(value)]


def _Object_entries(value):
    return [[name, vars(value)[_key(name)]] for name in _ordered(value)]


def _Object_fromEntries(pairs):
    return _Obj(**{_key(pair[0]): pair[1] for pair in _iter(pairs)})


def _Object_freeze(value):
    return value


def _has(value, name):
    if _isinstance(value, (_Obj, _Plain)):
        return _key(name) in vars(value)
    raise TypeError("only objects have entries")


# Maps and sets

def _entry(key):
    """A key that equals what the language takes as the same key."""
    kind = type(key)
    if kind is str or kind is float or kind is int or key is None:
        return key
    if kind is bool or kind is list:
        raise TypeError("this kind of key is not known")
    return key


class _Map(dict):
    def __init__(self, pairs=None):
        dict.__init__(self)
        if pairs is not None:
            for pair in _iter(pairs):
                self[_entry(pair[0])] = pair[1]


class _Set(dict):
    def __init__(self, members=None):
        dict.__init__(self)
        if members is not None:
            for member in _iter(members):
                self[_entry(member)] = None


def _map_set(target, key, value):
    target[_entry(key)] = value
    return target


def _set_add(target, member):
    target[_entry(member)] = None
    return target


def _drop(target, key):
    if key in target:
        del target[key]
        return True
    return False


def _clear(target):
    target.clear()


def _pairs(target):
    if type(target) is _Map:
        return [[key, value] for key, value in target.items()]
    if type(target) is list:
        return [[i, value] for i, value in enumerate(target)]
    raise TypeError("there are no entries of this")


def _keys(target):
    return list(range(len(target))) if type(target) is list else list(target)


def _values(target):
    return list(target.values()) if type(target) is _Map else list(target)


def _for_each_pair(target, run, count):
    for key, value in list(target.items()):
        run(*(value, key, target)[:count])


# Reading and writing by place or name

def _iter(value):
    kind = type(value)
    if kind is list or kind is str:
        return value
    if kind is _Map:
        return [[key, entry] for key, entry in value.items()]
    if kind is _Set:
        return list(value)
    raise TypeError("this cannot be gone through")


def _at(values, place):
    """values[place]; nothing where there is none."""
    if type(place) is int:
        return values[place] if 0 <= place < len(values) else None
    whole = int(place) if place == place and abs(place) < 1e15 else -1
    return values[whole] if whole == place and 0 <= whole < len(values) else None


def _number_at(values, place):
    """As _at, for arithmetic: there, what is not there is no number."""
    if type(place) is int and 0 <= place < len(values):
        value = values[place]
    else:
        value = _at(values, place)
    return _nan if value is None else value


def _get(value, name):
    kind = type(value)
    if kind is list or kind is str:
        if type(name) is str:
            if name == "length":
                return len(value)
            raise TypeError("a list has no %s" % name)
        return _at(value, name)
    if value is None:
        raise TypeError("nothing has no %s" % _str(name))
    return getattr(value, _key(name))


def _put(values, place, value):
    """values[place] = value, where a list grows as the language lets it grow."""
    if type(values) is not list:
        setattr(values, _key(place), value)
        return value
    if type(place) is not int:
        whole = int(place)
        if whole != place:
            raise TypeError("a place in a list is a whole number")
        place = whole
    if place < 0:
        raise TypeError("a place in a list is not negative")
    size = len(values)
    if place < size:
        values[place] = value
    else:
        values.extend([None] * (place - size))
        values.append(value)
    return value


def _set_attribute(target, name, value):
    setattr(target, name, value)
    return value


def _len(value):
    kind = type(value)
    if kind is list or kind is str:
        return len(value)
    if value is None:
        raise TypeError("nothing has no length")
    return value.length


def _resize(values, size):
    count = int(size)
    del values[count:]
    values.extend([None] * (count - len(values)))


# What counts as true, and what as the same

def _truthy(value):
    if value is None or value is False:
        return False
    kind = type(value)
    if kind is int or kind is float:
        return value != 0 and value == value
    return value != "" if kind is str else True


def _same(one, other):
    if one is other:
        return not (type(one) is float and one != one)
    kind, other_kind = type(one), type(other)
    if kind is bool or other_kind is bool:
        return False
    if kind is str or other_kind is str:
        return kind is other_kind and one == other
    if (kind is int or kind is float) and (other_kind is int or other_kind is float):
        return one == other
    return False


def _typeof(value):
    if value is None:
        return "undefined"
    kind = type(value)
    if kind is bool:
        return "boolean"
    if kind is int or kind is float:
        return "number"
    if kind is str:
        return "string"
    if callable(value) and not _isinstance(value, _Made):
        return "function"
    return "object"


def _is_number(value):
    kind = type(value)
    return kind is float or kind is int


def _fewer(function, count):
    """A function that is given more than it takes."""
    return lambda *cells: function(*cells[:count])


# Numbers

_Number_MAX_SAFE_INTEGER = 9007199254740991
_Number_MIN_SAFE_INTEGER = -9007199254740991
_Number_MAX_VALUE = 1.7976931348623157e308
_Number_MIN_VALUE = 5e-324
_Number_EPSILON = 2.220446049250313e-16
_Number_POSITIVE_INFINITY = _inf
_Number_NEGATIVE_INFINITY = -_inf
_Number_NaN = _nan
_Math_PI = math.pi
_Math_E = math.e
_Math_LN2 = math.log(2)
_Math_LN10 = math.log(10)
_Math_LOG2E = 1 / math.log(2)
_Math_LOG10E = 1 / math.log(10)
_Math_SQRT2 = math.sqrt(2)
_Math_SQRT1_2 = math.sqrt(0.5)


def _Number_isFinite(value=None):
    kind = type(value)
    return kind is int or (kind is float and value - value == 0)


def _Number_isInteger(value=None):
    kind = type(value)
    return kind is int or (kind is float and value.is_integer())


def _Number_isSafeInteger(value=None):
    return _Number_isInteger(value) and abs(value) <= _Number_MAX_SAFE_INTEGER


def _Number_isNaN(value=None):
    return type(value) is float and value != value


def _isFinite(value=None):
    return _Number_isFinite(_Number(value))


def _isNaN(value=None):
    return _Number_isNaN(_Number(value))


_WHOLE = re.compile(r"[+-]?[0-9]+\Z")
_DECIMAL = re.compile(r"[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?\Z")
_OTHER_BASE = re.compile(r"0(?:[xX][0-9a-fA-F]+|[oO][0-7]+|[bB][01]+)\Z")


def _Number(value=None):
    kind = type(value)
    if kind is float:
        return value
    if kind is int:
        return value if abs(value) <= _Number_MAX_SAFE_INTEGER else float(value)
    if kind is bool:
        return int(value)
    if kind is str:
        text = value.strip(_SPACES)
        if text == "":
            return 0
        if _WHOLE.match(text) or _DECIMAL.match(text):
            return float(text)
        if _OTHER_BASE.match(text):
            return float(int(text, 0))
        if text in ("Infinity", "+Infinity"):
            return _inf
        return -_inf if text == "-Infinity" else _nan
    return _nan


def _BigInt(value):
    return int(value)


def _quotient(a, b):
    """Whole numbers divided, what is left over dropped."""
    whole = abs(a) // abs(b)
    return whole if (a < 0) == (b < 0) else -whole


def _by_zero(a, b):
    """a / b for b of 0, whose sign counts, or of none."""
    if a == 0 or a != a or b != b:
        return _nan
    return math.copysign(_inf, a) * math.copysign(1.0, b)


def _div(a, b):
    return a / b if b else _by_zero(a, b)


def _mod(a, b):
    if b == 0 or a != a or b != b or a in (_inf, -_inf):
        return _nan
    if type(a) is int and type(b) is int and a >= 0 and b > 0:
        return a % b
    return math.fmod(a, b)


def _pow(a, b):
    try:
        return math.pow(a, b)
    except ValueError:
        # 0 to a negative power, or a negative number to a fraction.
        if a != 0:
            return _nan
        odd = float(b).is_integer() and b % 2 == 1
        return math.copysign(_inf, a) if odd else _inf
    except OverflowError:
        return -_inf if a < 0 and b % 2 == 1 else _inf


def _int32(value):
    if value - value != 0:
        return 0
    low = int(value) & 0xFFFFFFFF
    return low - 0x100000000 if low >= 0x80000000 else low


def _shift_left(a, b):
    return _int32(_int32(a) << (_int32(b) & 31))


def _shift_right(a, b):
    return _int32(a) >> (_int32(b) & 31)


def _shift_right_unsigned(a, b):
    return (_int32(a) & 0xFFFFFFFF) >> (_int32(b) & 31)


def _safe(function, over=_inf):
    """A function of the library that gives a number instead of raising."""

    def guarded(x):
        try:
            return function(x)
        except ValueError:
            return _nan
        except OverflowError:
            return over

    return guarded


_Math_sqrt = _safe(math.sqrt)
_Math_exp = _safe(math.exp)
_Math_sin = _safe(math.sin)
_Math_cos = _safe(math.cos)
_Math_tan = _safe(math.tan)
_Math_asin = _safe(math.asin)
_Math_acos = _safe(math.acos)
_Math_atan = math.atan
_Math_atan2 = math.atan2
_Math_tanh = math.tanh
_Math_expm1 = _safe(math.expm1)
_Math_abs = abs
_Math_pow = _pow


def _Math_sinh(x):
    try:
        return math.sinh(x)
    except OverflowError:
        return math.copysign(_inf, x)


def _Math_cosh(x):
    try:
        return math.cosh(x)
    except OverflowError:
        return _inf


def _logarithm(function, least):
    def guarded(x):
        if x > least:
            return function(x)
        return -_inf if x == least else _nan

    return guarded


_Math_log = _logarithm(math.log, 0)
_Math_log10 = _logarithm(math.log10, 0)
_Math_log2 = _logarithm(math.log2, 0)
_Math_log1p = _logarithm(math.log1p, -1)


def _Math_atanh(x):
    if -1 < x < 1:
        return math.atanh(x)
    return math.copysign(_inf, x) if x in (1, -1) else _nan


def _Math_cbrt(x):
    if x == 0 or x - x != 0:
        return x
    root = math.copysign(abs(x) ** (1 / 3), x)
    # One step of Newton's: the third is no fraction of two.
    return root - (root * root * root - x) / (3 * root * root)


def _Math_hypot(*values):
    return math.hypot(*values)


def _whole(function):
    """Rounds to a whole number; what is large is whole already."""

    def rounded(x):
        if type(x) is int or not -9007199254740992 < x < 9007199254740992:
            return x
        return function(x)

    return rounded


_Math_floor = _whole(math.floor)
_Math_ceil = _whole(math.ceil)
_Math_trunc = _whole(math.trunc)


def _half_up(x):
    low = math.floor(x)
    return low + 1 if x - low >= 0.5 else low


_Math_round = _whole(_half_up)


def _Math_max(*values):
    most = -_inf
    for value in values:
        if value > most:
            most = value
        elif value != value:
            return _nan
    return most


def _Math_min(*values):
    least = _inf
    for value in values:
        if value < least:
            least = value
        elif value != value:
            return _nan
    return least


def _max2(a, b):
    return a if a > b else b if b >= a else _nan


def _min2(a, b):
    return a if a < b else b if b <= a else _nan


def _Math_sign(x):
    return x if x == 0 or x != x else 1 if x > 0 else -1


# Numbers as text

def _number_text(x):
    if type(x) is int:
        if abs(x) < 10 ** 21:
            return str(x)
        x = float(x)
    if x != x:
        return "NaN"
    if x - x != 0:
        return "Infinity" if x > 0 else "-Infinity"
    if x == 0:
        return "0"
    sign = "-" if x < 0 else ""
    mantissa, _, power = repr(abs(x)).partition("e")
    whole, _, part = mantissa.partition(".")
    if part == "0":
        part = ""
    digits = whole + part
    point = len(whole) + int(power or 0)
    stripped = digits.lstrip("0")
    point -= len(digits) - len(stripped)
    digits = stripped.rstrip("0")
    count = len(digits)
    if count <= point <= 21:
        text = digits + "0" * (point - count)
    elif 0 < point <= 21:
        text = digits[:point] + "." + digits[point:]
    elif -6 < point <= 0:
        text = "0." + "0" * -point + digits
    else:
        power = point - 1
        more = "." + digits[1:] if count > 1 else ""
        text = "%s%se%s%d" % (digits[0], more, "+" if power >= 0 else "-", abs(power))
    return sign + text


def _digits(x, count):
    """The digits of x > 0 rounded to so many, halves up, and the power of ten of the first."""
    with localcontext() as context:
        context.prec = count
        context.rounding = ROUND_HALF_UP
        rounded = +Decimal(x)
    digits = "".join(map(str, rounded.as_tuple().digits)).ljust(count, "0")
    return digits, rounded.adjusted()


def _not_finite(x):
    return x - x != 0


def _toPrecision(x, count=None):
    if count is None or _not_finite(x):
        return _number_text(x)
    count = int(count)
    if x == 0:
        return "0" + ("." + "0" * (count - 1) if count > 1 else "")
    sign = "-" if x < 0 else ""
    digits, power = _digits(abs(x), count)
    if power < -6 or power >= count:
        more = "." + digits[1:] if count > 1 else ""
        return "%s%s%se%s%d" % (sign, digits[0], more, "+" if power >= 0 else "-", abs(power))
    if power < 0:
        return sign + "0." + "0" * (-power - 1) + digits
    more = "." + digits[power + 1:] if count > power + 1 else ""
    return sign + digits[:power + 1] + more


def _toFixed(x, count=0):
    if _not_finite(x) or abs(x) >= 1e21:
        return _number_text(x)
    with localcontext() as context:
        context.prec = 400
        rounded = abs(Decimal(x)).quantize(Decimal(1).scaleb(-int(count)), rounding=ROUND_HALF_UP)
    return ("-" if x < 0 else "") + format(rounded, "f")


def _toExponential(x, count=None):
    if _not_finite(x):
        return _number_text(x)
    sign = "-" if x < 0 else ""
    if count is None:
        shortest = re.sub(r"e.*", "", repr(abs(float(x)))).replace(".", "").strip("0")
        count = max(0, len(shortest) - 1)
    digits, power = _digits(abs(x), int(count) + 1) if x != 0 else ("0" * (int(count) + 1), 0)
    more = "." + digits[1:] if len(digits) > 1 else ""
    return "%s%s%se%s%d" % (sign, digits[0], more, "+" if power >= 0 else "-", abs(power))


def _str(value):
    kind = type(value)
    if kind is str:
        return value
    if kind is int or kind is float:
        return _number_text(value)
    if kind is bool:
        return "true" if value else "false"
    if value is None:
        return "undefined"
    if kind is list:
        return _join(value)
    if _isinstance(value, _Error):
        return value.name + ": " + value.message
    return "[object Object]"


def _String(value=""):
    return _str(value)


def _Boolean(value=None):
    return _truthy(value)


def _add(a, b):
    """a + b where it is not known whether they are numbers or text."""
    if type(a) is str or type(b) is str:
        return _str(a) + _str(b)
    return _Number(a) + _Number(b)


def _json_value(value):
    kind = type(value)
    if kind is str or value is None or kind is bool:
        return value
    if kind is list:
        return [_json_value(entry) for entry in value]
    raise TypeError("this is not known how to write as JSON")


def _JSON_stringify(value):
    return json.dumps(_json_value(value), separators=(",", ":"), ensure_ascii=False)


# Lists

def _Array_isArray(value=None):
    return type(value) is list


def _Array_from(source, make=None, count=1):
    items = [None] * int(source.length) if type(source) is _Obj else list(_iter(source))
    return items if make is None else _map(items, make, count)


def _array_of(size):
    return [None] * int(size)


def _typed_array(source):
    return list(source) if type(source) is list else [0] * int(source)


def _given(run, count):
    """A function of value, place and list that hands over as many as are taken."""
    return run if count == 3 else (lambda x, i, o: run(x, i)) if count == 2 else (lambda x, i, o: run())


def _map(values, run, count=1):
    if count == 1:
        return [run(value) for value in values]
    if count == 2:
        return [run(value, i) for i, value in enumerate(values)]
    run = _given(run, count)
    return [run(value, i, values) for i, value in enumerate(values)]


def _filter(values, run, count=1):
    return [value for value, kept in zip(values, _map(values, run, count)) if _truthy(kept)]


def _found(values, run, count):
    """Places that pass, one after the other, none tried before it is asked for."""
    if count == 1:
        return (i for i, value in enumerate(values) if _truthy(run(value)))
    run = _given(run, count)
    return (i for i, value in enumerate(values) if _truthy(run(value, i, values)))


def _some(values, run, count=1):
    for _ in _found(values, run, count):
        return True
    return False


def _every(values, run, count=1):
    if count == 1:
        return all(_truthy(run(value)) for value in values)
    run = _given(run, count)
    return all(_truthy(run(value, i, values)) for i, value in enumerate(values))


def _find(values, run, count=1):
    for i in _found(values, run, count):
        return values[i]
    return None


def _findIndex(values, run, count=1):
    for i in _found(values, run, count):
        return i
    return -1


def _forEach(values, run, count=1):
    if count == 1:
        for value in values:
            run(value)
    else:
        _map(values, run, count)


def _flat(values, depth=1):
    out = []
    for value in values:
        if type(value) is list:
            out.extend(value if depth <= 1 else _flat(value, depth - 1))
        else:
            out.append(value)
    return out


def _flatMap(values, run, count=1):
    return _flat(_map(values, run, count))


_NONE = object()


def _reduce(values, run, start=_NONE, count=2):
    result = start
    for i, value in enumerate(values):
        if result is _NONE:
            result = value
        elif count <= 2:
            result = run(result, value)
        else:
            result = run(*(result, value, i, values)[:count])
    if result is _NONE:
        raise TypeError("nothing to reduce, and nothing to start with")
    return result


def _reduceRight(values, run, start=_NONE, count=2):
    result = start
    for i in range(len(values) - 1, -1, -1):
        result = values[i] if result is _NONE else run(*(result, values[i], i, values)[:count])
    if result is _NONE:
        raise TypeError("nothing to reduce, and nothing to start with")
    return result


def _bound(size, place):
    place = max(-size, min(size, place))
    whole = int(place)
    return max(0, size + whole) if whole < 0 else whole


def _slice(values, start=0, end=None):
    size = len(values)
    return values[_bound(size, start or 0):size if end is None else _bound(size, end)]


def _splice(values, start, count=_inf, *more):
    begin = _bound(len(values), start)
    end = begin + int(max(0, min(count, len(values) - begin)))
    taken = values[begin:end]
    values[begin:end] = more
    return taken


def _push(values, *more):
    values.extend(more)
    return len(values)


def _pop(values):
    return values.pop() if values else None


def _shift(values):
    return values.pop(0) if values else None


def _unshift(values, *more):
    values[0:0] = more
    return len(values)


def _join(values, between=","):
    return between.join("" if value is None else _str(value) for value in values)


def _reverse(values):
    values.reverse()
    return values


def _sort(values, compare=None):
    if compare is None:
        values.sort(key=_str)
        return values

    def sign(a, b):
        order = compare(a, b)
        return -1 if order < 0 else 1 if order > 0 else 0

    values.sort(key=functools.cmp_to_key(sign))
    return values


def _fill(values, value=None, start=0, end=None):
    size = len(values)
    begin, stop = _bound(size, start), size if end is None else _bound(size, end)
    values[begin:stop] = [value] * (stop - begin)
    return values


def _concat(values, *more):
    out = list(values)
    for part in more:
        if type(part) is list:
            out.extend(part)
        else:
            out.append(part)
    return out


def _includes(values, wanted):
    return any(_same(value, wanted) or (value != value and wanted != wanted) for value in values)


def _indexOf(values, wanted, start=0):
    for i in range(_bound(len(values), start), len(values)):
        if _same(values[i], wanted):
            return i
    return -1


def _lastIndexOf(values, wanted):
    for i in range(len(values) - 1, -1, -1):
        if _same(values[i], wanted):
            return i
    return -1


def _from_end(values, place):
    return _at(values, place if place >= 0 else len(values) + place)


def _up(start, stop):
    """start, start + 1, … below stop, for bounds that may be whole as fractions are written."""
    if type(start) is int and type(stop) is int:
        return range(start, stop)
    if start == start and start - start == 0 and int(start) == start and stop - stop == 0:
        return range(int(start), math.ceil(stop))
    return _steps_up(start, stop)


def _steps_up(start, stop):
    i = start
    while i < stop:
        yield i
        i = i + 1


def _down(start, stop):
    """start, start - 1, … above stop."""
    if type(start) is int and type(stop) is int:
        return range(start, stop, -1)
    if start == start and start - start == 0 and int(start) == start and stop - stop == 0:
        return range(int(start), math.floor(stop), -1)
    return _steps_down(start, stop)


def _steps_down(start, stop):
    i = start
    while i > stop:
        yield i
        i = i - 1


# Text

class _RegExp:
    def __init__(self, pattern, flags):
        self.compiled = re.compile(pattern, re.I if "i" in flags else 0)
        self.all = "g" in flags


_regexp = functools.lru_cache(None)(_RegExp)


def _test(pattern, text):
    return pattern.compiled.search(text) is not None


def _match(text, pattern):
    if pattern.all:
        found = [match.group(0) for match in pattern.compiled.finditer(text)]
        return found or None
    match = pattern.compiled.search(text)
    return None if match is None else [match.group(0), *match.groups()]


def _replace(text, wanted, by, count=1):
    if type(wanted) is str:
        return text.replace(wanted, by(wanted) if callable(by) else by, 1)
    if callable(by):
        make = lambda match: _str(by(*(match.group(0), *match.groups())[:count]))
    elif "$" in by:
        raise TypeError("a replacement that names its groups is not known")
    else:
        make = lambda match: by
    return wanted.compiled.sub(make, text, count=0 if wanted.all else 1)


def _split(text, by, most=None):
    parts = list(text) if by == "" else text.split(by)
    return parts if most is None else parts[:int(most)]


def _trim(text):
    return text.strip(_SPACES)


def _trimEnd(text):
    return text.rstrip(_SPACES)


def _trimStart(text):
    return text.lstrip(_SPACES)


def _codePointAt(text, place=0):
    sign = _at(text, place)
    return None if sign is None else ord(sign)


def _padStart(text, size, by=" "):
    return text.rjust(int(size), by)


def _padEnd(text, size, by=" "):
    return text.ljust(int(size), by)


def _repeat(text, count):
    return text * int(count)


def _text_slice(text, start=0, end=None):
    return _slice(text, start, end)


def _localeCompare(text, other):
    return (text > other) - (text < other)


def _call(target, name, *cells):
    """A method of what is not known before."""
    if type(target) in (list, str, int, float, bool) or target is None:
        raise TypeError("%s is not known of this" % name)
    method = getattr(target, name)
    if type(method) is _Function and method.takes_self:
        return method.body(target, *cells)
    return method(*cells)


# What is written here for this language instead of being translated

def _flattened(cells):
    out = []
    for cell in cells:
        if type(cell) is list:
            out.append(len(cell))
            out.append(_flattened(cell))
        else:
            out.append((type(cell) is bool, cell))
    return tuple(out)


def _hashOf(cells):
    """A number by which arguments are found again: those that are the same have the same."""
    return hash(_flattened(cells))
