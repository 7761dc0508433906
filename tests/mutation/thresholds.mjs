/** What `--thresholds` asks about: comparisons of quantities, arithmetic, and the lesser or greater of two. */
const DECIDES = {
	EqualityOperator: / (<=?|>=?) /,
	ArithmeticOperator: / [-+*/%] /,
	MethodExpression: /^Math\.(min|max)\(/
};

export const OTHER_MUTATORS = [
	'ArrayDeclaration',
	'ArrowFunction',
	'AssignmentOperator',
	'BlockStatement',
	'BooleanLiteral',
	'ConditionalExpression',
	'LogicalOperator',
	'ObjectLiteral',
	'OptionalChaining',
	'Regex',
	'StringLiteral',
	'UnaryOperator',
	'UpdateOperator'
];

/** Stryker chooses by kind of change only: `===` and `.filter` are of the same kinds as `<` and `Math.min`. */
export const isThreshold = ({ mutatorName, replacement }) => DECIDES[mutatorName]?.test(replacement) ?? false;
