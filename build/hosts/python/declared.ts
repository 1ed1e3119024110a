import ts from "typescript";
import { identifiersOf, writtenTarget } from "./syntax";

/** Where what a name stands for is declared. */
export class Declared {
  constructor(private readonly checker: ts.TypeChecker) {}

  symbolAt(identifier: ts.Identifier): ts.Symbol | undefined {
    return ts.isShorthandPropertyAssignment(identifier.parent)
      ? this.checker.getShorthandAssignmentValueSymbol(identifier.parent)
      : this.checker.getSymbolAtLocation(identifier);
  }

  of(symbol: ts.Symbol): ts.Node | undefined {
    let found = symbol;
    if (found.flags & ts.SymbolFlags.Alias) found = this.checker.getAliasedSymbol(found);
    found = this.checker.getExportSymbolOfSymbol(found);
    return found.valueDeclaration ?? found.declarations?.[0];
  }

  at(identifier: ts.Identifier): ts.Node | undefined {
    const symbol = this.symbolAt(identifier);
    return symbol && this.of(symbol);
  }

  /** Whether a property is declared as one that is never written to again. */
  isReadonly(node: ts.PropertyAccessExpression): boolean {
    const declaration = this.checker.getSymbolAtLocation(node.name)?.valueDeclaration;
    return (
      declaration !== undefined &&
      (ts.getCombinedModifierFlags(declaration as ts.Declaration) & ts.ModifierFlags.Readonly) !== 0
    );
  }

  isWrittenTo(declaration: ts.Node, inside: ts.Node): boolean {
    let found = false;
    const visit = (node: ts.Node): void => {
      if (found) return;
      const target = writtenTarget(node);
      if (target !== undefined) {
        found = identifiersOf(target).some((identifier) => this.at(identifier) === declaration);
      }
      ts.forEachChild(node, visit);
    };
    visit(inside);
    return found;
  }
}
