using System.Collections.Concurrent;
using System.Diagnostics;
using System.Reflection;
using System.Runtime.Loader;
using Xunit;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace FuelMath.Mutation;

/// <summary>The tests of an assembly, run one by one in this process.</summary>
internal sealed class Suite : IDisposable
{
    private readonly Assembly assembly;
    private readonly XunitTestFramework framework;
    private readonly ITestFrameworkExecutor executor;

    internal Suite(string tests)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(tests))!;
        // Tests look for their data beside their assembly.
        AppContext.SetData("APP_CONTEXT_BASE_DIRECTORY", folder + Path.DirectorySeparatorChar);
        AssemblyLoadContext.Default.Resolving += (context, name) =>
            Path.Combine(folder, name.Name + ".dll") is var path && File.Exists(path)
                ? context.LoadFromAssemblyPath(path)
                : null;
        assembly = AssemblyLoadContext.Default.LoadFromAssemblyPath(Path.GetFullPath(tests));
        Library = AssemblyLoadContext.Default.LoadFromAssemblyPath(Path.Combine(folder, "FuelMath.dll"));
        Directory.SetCurrentDirectory(folder);
        framework = new XunitTestFramework(new Sink(_ => true));
        executor = framework.GetExecutor(assembly.GetName());
    }

    internal Assembly Library { get; }

    internal ConcurrentDictionary<string, ITestCase> Cases { get; } = new();

    /// <summary>Finds the tests of the classes whose names contain one of some words, divided by bars.</summary>
    internal void Find(string filter)
    {
        ITestFrameworkDiscoverer discoverer = framework.GetDiscoverer(Reflector.Wrap(assembly));
        string[] wanted = filter.Split('|');
        foreach (Type type in assembly.GetTypes())
        {
            if (
                type is { IsClass: true, IsAbstract: false }
                && wanted.Any(w => $"{type.FullName}.".Contains(w, StringComparison.Ordinal))
            )
            {
                using var done = new ManualResetEventSlim();
                var sink = new Sink(message =>
                {
                    switch (message)
                    {
                        case ITestCaseDiscoveryMessage found:
                            Cases.TryAdd(found.TestCase.UniqueID, found.TestCase);
                            break;
                        case IDiscoveryCompleteMessage:
                            done.Set();
                            break;
                    }

                    return true;
                });
                discoverer.Find(type.FullName!, false, sink, new Settings());
                done.Wait();
            }
        }
    }

    /// <summary>Runs some tests until one fails; the milliseconds, and the name of the one that failed with what it says.</summary>
    internal (double Milliseconds, string? Failed) Run(IEnumerable<ITestCase> cases)
    {
        using var done = new ManualResetEventSlim();
        string? failed = null;
        var sink = new Sink(message =>
        {
            switch (message)
            {
                case ITestFailed test:
                    failed ??= $"{test.TestCase.DisplayName}: {string.Join(" ", test.Messages)}";
                    break;
                case ITestAssemblyFinished:
                    done.Set();
                    break;
            }

            return failed is null;
        });
        long start = Stopwatch.GetTimestamp();
        executor.RunTests(cases, sink, new Settings());
        done.Wait();
        return (Stopwatch.GetElapsedTime(start).TotalMilliseconds, failed);
    }

    public void Dispose() => framework.Dispose();

    private sealed class Sink(Func<IMessageSinkMessage, bool> take) : LongLivedMarshalByRefObject, IMessageSink
    {
        public bool OnMessage(IMessageSinkMessage message) => take(message);
    }

    /// <summary>One test after the other.</summary>
    private sealed class Settings : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
    {
        private readonly Dictionary<string, object?> values = new()
        {
            ["xunit.execution.DisableParallelization"] = true,
            ["xunit.execution.MaxParallelThreads"] = 1,
            ["xunit.execution.SynchronousMessageReporting"] = true,
            ["xunit.discovery.SynchronousMessageReporting"] = true,
        };

        public TValue GetValue<TValue>(string name) =>
            values.TryGetValue(name, out object? value) ? (TValue)value! : default!;

        public void SetValue<TValue>(string name, TValue value) => values[name] = value;
    }
}
