using System.Diagnostics.CodeAnalysis;

namespace ClearanceCheck.Units;

/// <summary>Either a value or the fault that kept it from being read.</summary>
public sealed class ParseResult<T>
    where T : struct
{
    private readonly T value;

    /// <summary>A value that was read.</summary>
    public ParseResult(T value) => this.value = value;

    /// <summary>A text that could not be read.</summary>
    public ParseResult(ParseFault fault) => Fault = fault;

    /// <summary>The fault, or null when the text was read.</summary>
    public ParseFault? Fault { get; }

    /// <summary>Whether the text was read.</summary>
    public bool IsRead => Fault is null;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">The text was not read.</exception>
    public T Value => Fault is null ? value : throw new InvalidOperationException(Fault.Message);

    /// <summary>Gives the value, or else the fault.</summary>
    public bool TryGet(out T read, [NotNullWhen(false)] out ParseFault? fault)
    {
        read = value;
        fault = Fault;
        return fault is null;
    }
}
