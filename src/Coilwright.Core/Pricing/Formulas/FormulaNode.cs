using System.Collections.Immutable;

namespace Coilwright.Core.Pricing.Formulas;

/// <summary>A part of a formula as it was read.</summary>
/// <param name="At">Where it stands in the formula, characters from 1; of a calculation, where its sign stands.</param>
internal abstract record FormulaNode(int At);

/// <summary>A number as written.</summary>
internal sealed record NumberNode(int At, decimal Value) : FormulaNode(At);

/// <summary>A figure or another rule, by name.</summary>
internal sealed record NameNode(int At, string Name) : FormulaNode(At);

/// <summary>The same with the other sign.</summary>
internal sealed record MinusNode(int At, FormulaNode Of) : FormulaNode(At);

/// <summary>A hundredth.</summary>
internal sealed record PercentNode(int At, FormulaNode Of) : FormulaNode(At);

/// <summary>Two parts and one of <c>+ - * /</c> between them.</summary>
internal sealed record CalculationNode(int At, char Sign, FormulaNode Left, FormulaNode Right) : FormulaNode(At);

/// <summary>One of <see cref="FormulaFunctions"/> with its values.</summary>
internal sealed record FunctionNode(int At, string Name, ImmutableArray<FormulaNode> Values) : FormulaNode(At);
