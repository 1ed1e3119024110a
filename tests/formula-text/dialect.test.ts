import {
  fromHost,
  functionsIn,
  literalArguments,
  nativeFunctionsIn,
  oneCall,
  rename,
  toFile,
  toScreen,
} from "../../src/formula-text/dialect";

const namespaces = ["IRRIG", "FIELDTEST"];

describe("on screen", () => {
  test.each(namespaces)("our functions stand under %s", (namespace) => {
    expect(toScreen("=IRRIG.PIPE.FRICTION(B4, B5, B6, Units)", namespace)).toBe(
      `=${namespace}.PIPE.FRICTION(B4, B5, B6, Units)`,
    );
  });

  test("any case is ours, and comes out in capitals", () => {
    expect(toScreen("=irrig.Lateral.Flow(B4)", "FIELDTEST")).toBe("=FIELDTEST.LATERAL.FLOW(B4)");
  });

  test("text, quoted sheet names and names that are no call are left alone", () => {
    const formula = `="IRRIG.PIPE.FRICTION(B4) says ""IRRIG.A.B("""&'IRRIG.A.B(x)'!B4&IRRIG.A.B`;
    expect(toScreen(formula, "FIELDTEST")).toBe(formula);
  });

  test("spaces and line breaks stay", () => {
    expect(toScreen("=SUM( 1 ,\n IRRIG.A.B( 2 ) )", "X1AB")).toBe("=SUM( 1 ,\n X1AB.A.B( 2 ) )");
  });
});

describe("in the file", () => {
  test.each(namespaces)(
    "a call is _xldudf_, %s and the id, without the equals sign",
    (namespace) => {
      expect(toFile("=IRRIG.LATERAL.PRESSURE(1, B4)*2", namespace)).toBe(
        `_xldudf_${namespace}_LATERAL_PRESSURE(1, B4)*2`,
      );
    },
  );

  test("a call inside another", () => {
    expect(toFile("=INDEX(IRRIG.LATERAL.SUMMARY(B4,,B5),2,2)")).toBe(
      "INDEX(_xldudf_IRRIG_LATERAL_SUMMARY(B4,,B5),2,2)",
    );
  });

  test("text inside quotes is never touched", () => {
    expect(toFile('="type =IRRIG.UNIT.CONVERT(1,""psi"",""kPa"") or LET(x"')).toBe(
      '"type =IRRIG.UNIT.CONVERT(1,""psi"",""kPa"") or LET(x"',
    );
    expect(toFile("='LET(x,1)'!A1+'it''s IRRIG.A.B('!A1")).toBe(
      "'LET(x,1)'!A1+'it''s IRRIG.A.B('!A1",
    );
  });

  test("newer native functions have their prefixes, old ones none", () => {
    expect(toFile('=TEXTJOIN(", ",TRUE,A1:A3)&SUM(SEQUENCE(3))&ROUND(SORT(B1:B3),1)')).toBe(
      '_xlfn.TEXTJOIN(", ",TRUE,A1:A3)&SUM(_xlfn.SEQUENCE(3))&ROUND(_xlfn._xlws.SORT(B1:B3),1)',
    );
  });

  test("a name that looks like a newer function but is no call keeps its own spelling", () => {
    expect(toFile("=let+1")).toBe("let+1");
  });

  test("names that LAMBDA introduces", () => {
    expect(toFile('=LAMBDA(q,d,IRRIG.PIPE.FRICTION(q,d,100,"q",140)+Q1)', "FIELDTEST")).toBe(
      '_xlfn.LAMBDA(_xlpm.q,_xlpm.d,_xldudf_FIELDTEST_PIPE_FRICTION(_xlpm.q,_xlpm.d,100,"q",140)+Q1)',
    );
  });

  test("names that LET introduces, used in later arguments, values not taken for names", () => {
    expect(toFile("=LET(a,B1,b,a*2,a+b+B1)")).toBe(
      "_xlfn.LET(_xlpm.a,B1,_xlpm.b,_xlpm.a*2,_xlpm.a+_xlpm.b+B1)",
    );
  });

  test("a lambda in a let, and names outside their call", () => {
    expect(toFile("=x+LET(f,LAMBDA(x,x^2),f(3))")).toBe(
      "x+_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.x,_xlpm.x^2),_xlpm.f(3))",
    );
  });

  test("numbers with exponents and absolute references are not names", () => {
    expect(toFile("=LET(e,1e3,$E$5*2.5E-2+.5+e)")).toBe(
      "_xlfn.LET(_xlpm.e,1e3,$E$5*2.5E-2+.5+_xlpm.e)",
    );
  });

  test("a parenthesis that is not closed is refused", () => {
    expect(() => toFile("=LET(a,1,a")).toThrow("not closed");
  });
});

describe("what a formula calls", () => {
  test("our functions by sheet name, in order, not in text", () => {
    expect(functionsIn('=IRRIG.SET.TIME(IRRIG.SOIL.NET(1,2,3),"IRRIG.A.B(")')).toEqual([
      "SET.TIME",
      "SOIL.NET",
    ]);
  });

  test("native functions, without the lambdas it names itself", () => {
    expect(nativeFunctionsIn("=LET(f,LAMBDA(x,x+1),ROUND(f(IRRIG.A.B(1)),0))")).toEqual([
      "LET",
      "LAMBDA",
      "ROUND",
    ]);
  });
});

describe("the literal arguments of an example", () => {
  test("numbers, text, truth and arrays; null where left out", () => {
    expect(
      literalArguments(
        '=IRRIG.A.B(50, -2.5, 1E-3, "a ""b"", c", TRUE, false,, {1,2;3,-4}, {"x";"y"})',
      ),
    ).toEqual([
      50,
      -2.5,
      0.001,
      'a "b", c',
      true,
      false,
      null,
      [
        [1, 2],
        [3, -4],
      ],
      [["x"], ["y"]],
    ]);
  });

  test("no argument at all, and a last one left out", () => {
    expect(literalArguments("=IRRIG.A.B()")).toEqual([]);
    expect(literalArguments("=IRRIG.A.B(1,)")).toEqual([1, null]);
  });

  test.each(["=A1", "=IRRIG.A.B(C3)", "=IRRIG.A.B(1+2)", "=IRRIG.A.B(1)+1", "IRRIG.A.B(1)", ""])(
    "%s is refused",
    (formula) => {
      expect(() => literalArguments(formula)).toThrow();
    },
  );
});

describe("what the pane needs of a formula", () => {
  test("one call taken apart, whatever stands in its arguments", () => {
    expect(oneCall('=IRRIG.PIPE.FRICTION(A1, "a,b(", {1,2;3,4}, SUM(1,2),)')).toEqual({
      name: "IRRIG.PIPE.FRICTION",
      arguments: ["A1", '"a,b("', "{1,2;3,4}", "SUM(1,2)", ""],
    });
    expect(oneCall("=RAND()")).toEqual({ name: "RAND", arguments: [] });
    for (const other of ["=A1", "=F(1)+1", "=F(1", "=(1)", ""])
      expect(oneCall(other)).toBeUndefined();
  });

  test("renaming leaves text, calls and other sheets' cells alone", () => {
    const names = new Map([["Units", "Units_2"]]);
    const sheets = new Map([
      ["My sheet", "My sheet (2)"],
      ["Line", "Line (2)"],
    ]);
    expect(
      rename("=IF(units=\"Units\",Units(1),'My sheet'!A1+Line!Units+Other!A1)", names, sheets),
    ).toBe("=IF(Units_2=\"Units\",Units(1),'My sheet (2)'!A1+'Line (2)'!Units+Other!A1)");
  });

  test("back from the host's spellings, text untouched", () => {
    const file = '=_xlfn.LAMBDA(_xlpm.q,_xldudf_FIELD_PIPE_FRICTION(_xlpm.q,"_xlpm.q",1))';
    expect(fromHost(file, "FIELD")).toBe('=LAMBDA(q,IRRIG.PIPE.FRICTION(q,"_xlpm.q",1))');
    expect(fromHost("=field.set.time(1,2)", "FIELD")).toBe("=IRRIG.SET.TIME(1,2)");
    expect(fromHost('="FIELD.SET.TIME(1)"', "FIELD")).toBe('="FIELD.SET.TIME(1)"');
  });
});
