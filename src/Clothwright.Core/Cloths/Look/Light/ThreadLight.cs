namespace Clothwright.Core.Cloths.Look.Light;

/// <summary>What a point of a thread sends to the eye of a light of strength 1.</summary>
/// <param name="Body">Light that went into the fibre and took its colour; before <see cref="BodyReference"/> is applied.</param>
/// <param name="Gloss">Light thrown back by the skin of the fibre in the colour of the lamp, or of the metal.</param>
public readonly record struct ThreadLight(double Body, double Gloss);
